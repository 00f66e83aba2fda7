/** Reading numbers and names out of a picture's bytes. Past the end there is only 0. */

export function uint16(bytes: Uint8Array, at: number): number {
  return ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0)
}

export function uint16Little(bytes: Uint8Array, at: number): number {
  return ((bytes[at + 1] ?? 0) << 8) | (bytes[at] ?? 0)
}

export function uint32(bytes: Uint8Array, at: number): number {
  return uint16(bytes, at) * 0x10000 + uint16(bytes, at + 2)
}

export function uint32Little(bytes: Uint8Array, at: number): number {
  return uint16Little(bytes, at + 2) * 0x10000 + uint16Little(bytes, at)
}

export function ascii(bytes: Uint8Array, at: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + length))
}

export function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}
