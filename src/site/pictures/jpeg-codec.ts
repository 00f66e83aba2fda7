/** I/O: reading and writing JPEG, by the codec of the package @jsquash/jpeg (MozJPEG as WebAssembly). */

import {readFile} from 'node:fs/promises'
import {createRequire} from 'node:module'
import decode, {init as initDecode} from '@jsquash/jpeg/decode.js'
import encode, {init as initEncode} from '@jsquash/jpeg/encode.js'
import type {Raster} from './shrink.ts'

export interface JpegCodec {
  /** The picture as it is looked at, turned upright; undefined where the codec cannot read it. */
  readonly read: (jpeg: Uint8Array) => Promise<Raster | undefined>
  readonly write: (picture: Raster) => Promise<Uint8Array>
}

/** Of 100: from about 80 on nobody sees the difference on a page (common practice, no source). */
const quality = 80

/** Loads the codec; a part of the command that only making pictures smaller needs. */
export async function loadJpegCodec(): Promise<JpegCodec> {
  await initDecode({instantiateWasm: await instantiator('dec/mozjpeg_dec.wasm')})
  await initEncode({instantiateWasm: await instantiator('enc/mozjpeg_enc.wasm')})
  return {
    read: async (jpeg) => {
      try {
        // A copy: the bytes of a small file share their buffer with those of others.
        return await decode(new Uint8Array(jpeg).buffer, {preserveOrientation: true})
      } catch {
        // Colours of print (CMYK) and broken files; the caller says which picture it was.
        return undefined
      }
    },
    write: async (picture) =>
      new Uint8Array(await encode({...picture, colorSpace: 'srgb'}, {quality})),
  }
}

type Instantiate = (
  imports: WebAssembly.Imports,
  done: (instance: WebAssembly.Instance) => void,
) => WebAssembly.Exports

async function instantiator(file: string): Promise<Instantiate> {
  const path = createRequire(import.meta.url).resolve(`@jsquash/jpeg/codec/${file}`)
  const code = await WebAssembly.compile(await readFile(path))
  return (imports, done) => {
    const instance = new WebAssembly.Instance(code, imports)
    done(instance)
    return instance.exports
  }
}
