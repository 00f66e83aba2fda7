import {describe, expect, test} from 'vitest'
import {findFile, mediaType} from '../../src/preview/find-file.ts'
import {type Asked, hostsOf, refusal} from '../../src/preview/request-guard.ts'

const hosts = hostsOf(['127.0.0.1'], 7250)
const reader: Asked = {
  method: 'GET',
  target: '/',
  host: '127.0.0.1:7250',
  origin: undefined,
  hasBody: false,
}

describe('a request', () => {
  test.each([
    [{}],
    [{host: 'localhost:7250'}],
    [{host: 'LOCALHOST:7250'}],
    [{method: 'HEAD'}],
    [{origin: 'http://127.0.0.1:7250'}],
  ])('of a reader is answered: %o', (asked) => {
    expect(refusal({...reader, ...asked}, hosts)).toBeUndefined()
  })

  // Status codes: RFC 9110, sections 7.4 (421), 15.5.4, 15.5.6, 15.5.14, 15.5.15.
  test.each([
    [{host: undefined}, 421],
    [{host: 'rebound.example:7250'}, 421],
    [{host: '127.0.0.1'}, 421],
    [{host: '127.0.0.1:7251'}, 421],
    [{host: '127.0.0.1:7250.example'}, 421],
    [{host: '192.168.1.20:7250'}, 421],
    [{origin: 'https://elsewhere.example'}, 403],
    [{origin: 'null'}, 403],
    [{origin: 'http://127.0.0.1:9999'}, 403],
    [{method: 'POST'}, 405],
    [{method: 'TRACE'}, 405],
    [{hasBody: true}, 413],
    [{target: `/${'a'.repeat(2048)}`}, 414],
    [{target: 'http://127.0.0.1:7250/'}, 400],
    [{target: '*'}, 400],
  ])('of anybody else is not: %o', (asked, status) => {
    expect(refusal({...reader, ...asked}, hosts)?.status).toBe(status)
  })

  test('may name a v6 address, and leave out port 80', () => {
    expect([...hostsOf(['::1'], 80)]).toEqual(['[::1]:80', '[::1]', 'localhost:80', 'localhost'])
    expect([...hostsOf(['192.168.1.20'], 8000)]).toEqual(['192.168.1.20:8000'])
  })
})

describe('a file', () => {
  const files = new Map([
    ['index.html', 'first'],
    ['recipes/crème/index.html', 'crème'],
    ['images/bowl.svg', 'bowl'],
  ])

  test.each([
    ['/', 'index.html'],
    ['/?again', 'index.html'],
    ['/index.html', 'index.html'],
    ['/recipes/cr%C3%A8me/', 'recipes/crème/index.html'],
    ['/images/bowl.svg', 'images/bowl.svg'],
  ])('of the site is found: %s', (target, path) => {
    expect(findFile(target, files)).toMatchObject({kind: 'file', path})
  })

  test('a folder without its end is sent on to itself, and to nowhere else', () => {
    expect(findFile('/recipes/cr%C3%A8me', files)).toEqual({
      kind: 'moved',
      to: '/recipes/cr%C3%A8me/',
    })
    expect(findFile('//elsewhere.example', files)).toEqual({kind: 'missing'})
    expect(
      findFile('//elsewhere.example/', new Map([['elsewhere.example/index.html', '']])),
    ).toEqual({kind: 'missing'})
  })

  test.each([
    '/../package.json',
    '/..%2Fpackage.json',
    '/images/../../package.json',
    '/%2e%2e/%2e%2e/etc/passwd',
    '/images/bowl.svg%00.html',
    '/%',
    '/%E0%A4%A',
    '/constructor',
    '/__proto__/',
  ])('outside it is not: %s', (target) => {
    expect(findFile(target, files)).toEqual({kind: 'missing'})
  })

  test('is called what it is, and unknown bytes are not shown', () => {
    expect(mediaType('images/a.SVG')).toBe('image/svg+xml')
    expect(mediaType('recipes/index.html')).toBe('text/html; charset=utf-8')
    expect(mediaType('images/a.exe')).toBe('application/octet-stream')
  })
})
