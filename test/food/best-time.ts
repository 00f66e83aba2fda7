/**
 * Milliseconds a job takes when nothing else gets in its way: the best of ten, so that other work
 * on the machine does not fail a test.
 */
export function bestMilliseconds(job: () => void): number {
  const times = Array.from({length: 10}, () => {
    const started = performance.now()
    job()
    return performance.now() - started
  })
  return Math.min(...times)
}
