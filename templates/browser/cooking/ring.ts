/** Three strokes of a small bell: high enough to be heard over a fan, and soon over. */
export function ring(): void {
  const context = new AudioContext()
  for (const [index, hertz] of [880, 880, 1174.7].entries()) {
    const tone = context.createOscillator()
    const loudness = context.createGain()
    const from = context.currentTime + index * 0.45
    tone.frequency.value = hertz
    loudness.gain.setValueAtTime(0.25, from)
    loudness.gain.exponentialRampToValueAtTime(0.001, from + 0.4)
    tone.connect(loudness).connect(context.destination)
    tone.start(from)
    tone.stop(from + 0.4)
  }
}
