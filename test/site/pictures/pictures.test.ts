import {h} from 'hastscript'
import {describe, expect, test} from 'vitest'
import {pictureSize} from '../../../src/site/pictures/picture-size.ts'
import {withPlacedPictures} from '../../../src/site/pictures/placed-pictures.ts'
import {withoutMetadata} from '../../../src/site/pictures/without-metadata.ts'
import {byTag} from '../../templates/tree.ts'
import {exif, jpeg, png, text} from './picture.ts'

function words(bytes: Uint8Array): string {
  return new TextDecoder('latin1').decode(bytes)
}

describe('the size of a picture', () => {
  test.each([
    ['a JPEG', jpeg(), 300, 200],
    ['a JPEG that is turned upside down', jpeg(exif(3)), 300, 200],
    ['a JPEG that lies on its side', jpeg(exif(6)), 200, 300],
    ['a PNG', png(), 300, 200],
    ['a GIF', new Uint8Array([...text('GIF89a'), 44, 1, 200, 0]), 300, 200],
    ['an SVG that says it', new Uint8Array(text('<svg width="300px" height=\'200\'>')), 300, 200],
    ['an SVG of a box', new Uint8Array(text('<?xml?><svg viewBox="0 0 300,200">')), 300, 200],
  ])('is read from %s', (_, bytes, width, height) => {
    expect(pictureSize(bytes)).toEqual({width, height})
  })

  test.each([
    ['nothing', new Uint8Array()],
    ['a text', new Uint8Array(text('a pot of soup'))],
    ['a JPEG that is broken off', jpeg().slice(0, 40)],
    ['an SVG as wide as its page', new Uint8Array(text('<svg width="100%" height="100%">'))],
  ])('is not made up for %s', (_, bytes) => expect(pictureSize(bytes)).toBeUndefined())
})

describe('what a camera wrote', () => {
  test('goes out of a JPEG, the rest stays to the byte', () => {
    const plain = withoutMetadata(jpeg(exif(1)))
    expect(words(jpeg(exif(1)))).toContain('boathouse')
    expect(words(plain)).not.toMatch(/boathouse|Exif|comment/)
    expect(words(plain)).toMatch(/JFIF.*ICC_PROFILE/s)
    expect([...plain.slice(-12)]).toEqual([...jpeg().slice(-12)])
  })

  test('goes with whatever stands behind the end of a JPEG: a film, with its place', () => {
    const bytes = new Uint8Array([...jpeg(), ...text('ftypmp42 the boathouse')])
    expect(withoutMetadata(bytes)).toEqual(withoutMetadata(jpeg()))
  })

  test.each([2, 3, 6, 8])('goes, but for how it is turned: %i', (orientation) => {
    const plain = withoutMetadata(jpeg(exif(orientation)))
    expect(words(plain)).not.toContain('boathouse')
    expect(pictureSize(plain)).toEqual(pictureSize(jpeg(exif(orientation))))
    // Once plain, there is no more to take away.
    expect(withoutMetadata(plain)).toEqual(plain)
  })

  test('goes out of a PNG', () => {
    const plain = words(withoutMetadata(png()))
    expect(plain).not.toMatch(/boathouse|camera|tEXt|eXIf/)
    expect(plain).toMatch(/IHDR.*IDAT.*IEND/s)
  })

  test.each([
    ['a JPEG that is broken off', jpeg(exif(6)).slice(0, 60)],
    ['an SVG', new Uint8Array(text('<svg/>'))],
    ['a PNG that is broken off', png().slice(0, 50)],
  ])('leaves %s as it is', (_, bytes) => expect(withoutMetadata(bytes)).toEqual(bytes))
})

describe('a picture on a page', () => {
  const sizes = new Map([
    ['images/rack/bowl.jpg', {width: 1600, height: 1000}],
    ['images/rack/bowl.800.jpg', {width: 800, height: 500}],
    ['images/rack/bowl.400.jpg', {width: 400, height: 250}],
    ['images/rack/bowl.800.png', {width: 800, height: 500}],
    ['images/rack/bowl.close.jpg', {width: 900, height: 900}],
  ])

  function placed(src: string) {
    const tree = {type: 'root' as const, children: [h('p', h('img', {src, alt: ''}))]}
    const page = withPlacedPictures({path: 'recipes/pot/index.html', tree}, sizes)
    return byTag(page.tree, 'img')[0]?.properties
  }

  test('has its size, and the smaller ones of its name to choose from', () => {
    expect(placed('../../images/rack/bowl.jpg')).toMatchObject({
      width: 1600,
      height: 1000,
      srcSet: [
        '../../images/rack/bowl.400.jpg 400w',
        '../../images/rack/bowl.800.jpg 800w',
        '../../images/rack/bowl.jpg 1600w',
      ].join(', '),
    })
  })

  test('without smaller ones has its size alone; one that is not there has none', () => {
    expect(placed('../../images/rack/bowl.close.jpg')).toEqual({
      src: '../../images/rack/bowl.close.jpg',
      alt: '',
      width: 900,
      height: 900,
    })
    expect(placed('../../images/none.jpg')).toEqual({src: '../../images/none.jpg', alt: ''})
  })
})
