import {dataStore} from '../../parts/data-script.ts'

const asked = new Map<string, Promise<unknown>>()

/**
 * Loads data that the build wrote into a file of their own; each file once.
 * @param path of the file, relative to the site
 * @param root way from the page to the site's folder: `../`
 * @returns what the file holds; rejects where it cannot be loaded, and is tried anew the next time
 */
export function loadData(path: string, root: string): Promise<unknown> {
  const before = asked.get(path)
  if (before !== undefined) return before
  const loading = new Promise<unknown>((resolve, reject) => {
    const script = document.createElement('script')
    script.src = root + path
    script.addEventListener('load', () => {
      const store: unknown = Reflect.get(globalThis, dataStore)
      resolve(typeof store === 'object' && store !== null ? Reflect.get(store, path) : undefined)
    })
    script.addEventListener('error', () => {
      asked.delete(path)
      script.remove()
      reject(new Error(`${path} cannot be loaded`))
    })
    document.head.append(script)
  })
  asked.set(path, loading)
  return loading
}
