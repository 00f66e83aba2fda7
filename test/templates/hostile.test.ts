import {HtmlValidate} from 'html-validate'
import {describe, expect, test} from 'vitest'
import {renderSite} from '../../src/site/render-site.ts'
import {attack} from './attack.ts'
import {siteInput} from './sample.ts'

describe('whatever a writer writes', () => {
  const files = renderSite(attack())
  const pages = files.filter(({path}) => path.endsWith('.html'))

  test('reaches the pages at all', () => {
    const shown = pages.filter(({content}) => String(content).includes('alert(1)'))
    expect(shown.length).toBe(pages.length)
  })

  test('leaves the HTML valid', async () => {
    expect(await faults(pages)).toEqual([])
  })
})

describe('the pages of the sample', () => {
  test('are valid HTML', async () => {
    const files = renderSite(
      siteInput({address: 'https://boathouse.example/', declare: 'us', netCarbohydrate: true}),
    )
    const pages = files.filter(({path}) => path.endsWith('.html'))
    expect(pages.length).toBeGreaterThan(10)
    expect(await faults(pages)).toEqual([])
  })

  test('hold no script and no style of their own, so that the policy can forbid both', () => {
    for (const {path, content} of renderSite(siteInput())) {
      if (!path.endsWith('.html')) continue
      const text = String(content)
      expect(text).toContain('default-src &#x27;none&#x27;')
      expect(text).not.toMatch(/ style=| on\w+=|<style|<script(?! type="application\/| src=)/)
    }
  })
})

async function faults(pages: readonly {path: string; content: unknown}[]) {
  // How long a title is, is the writer's to say.
  const validator = new HtmlValidate({
    extends: ['html-validate:recommended'],
    rules: {'long-title': 'off'},
  })
  const found: string[] = []
  for (const {path, content} of pages) {
    const {results} = await validator.validateString(String(content))
    for (const {messages} of results) {
      for (const {ruleId, message, line, column} of messages) {
        found.push(`${path}:${line}:${column} ${ruleId}: ${message}`)
      }
    }
  }
  return found
}
