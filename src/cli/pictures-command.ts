import {rename, writeFile} from 'node:fs/promises'
import path from 'node:path'
import {diskReason, EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {readCookbook} from '../cookbook/read-folder.ts'
import {countText} from '../report/count-text.ts'
import {loadJpegCodec} from '../site/pictures/jpeg-codec.ts'
import {smallerPaths, smallerPictures} from '../site/pictures/smaller-pictures.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {print, tell} from './output.ts'

/** Writes the smaller pictures that are missing, and names each. */
export async function picturesCommand(content: string): Promise<ExitCode> {
  const {images} = (await readCookbook(content)).sources
  const there = new Set(images.map((image) => image.path))
  const wanted = images.flatMap((image) => {
    const missing = new Map([...smallerPaths(image)].filter(([, file]) => !there.has(file)))
    return missing.size === 0 ? [] : [{image, missing}]
  })
  const codec = wanted.length === 0 ? undefined : await loadJpegCodec()
  let written = 0
  let unread = 0
  for (const {image, missing} of wanted) {
    const made = codec && (await smallerPictures(image, missing, codec))
    if (made === undefined) {
      unread++
      tell(`images/${image.path} cannot be read: save it as a JPEG of RGB colours\n`)
      continue
    }
    for (const one of made) {
      const file = path.join(content, 'images', one.path)
      await save(file, one.bytes)
      print(`${file}  ${Math.round(one.bytes.length / 1000)} kB\n`)
      written++
    }
  }
  tell(`${countText(written, 'picture')} made, of ${countText(images.length, 'file')} in images/\n`)
  return unread === 0 ? exitCodes.fine : exitCodes.errorsFound
}

/** Whole or not at all: a picture that is there is not made again. */
async function save(file: string, bytes: Uint8Array): Promise<void> {
  // Hidden, so that nobody takes it for a picture while it is being written.
  const part = path.join(path.dirname(file), `.${path.basename(file)}.part`)
  try {
    await writeFile(part, bytes)
    await rename(part, file)
  } catch (error) {
    throw new EnvironmentFailure(`Cannot write ${file}: ${diskReason(error)}`)
  }
}
