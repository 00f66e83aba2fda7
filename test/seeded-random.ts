/**
 * Numbers from 0 to 1 that are the same in every run. Source: Park & Miller, Random number
 * generators: good ones are hard to find, Communications of the ACM 31 (1988), the multiplier 48271
 * of their reply of 1993.
 * @param seed whole number from 1 to 2,147,483,646
 */
export function seededRandom(seed: number): () => number {
  const modulus = 2 ** 31 - 1
  let state = seed
  return () => {
    state = (state * 48_271) % modulus
    return state / modulus
  }
}
