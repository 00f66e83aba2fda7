import type {Settings} from './cookbook.ts'
import {reportHiddenCharacters} from './hidden-characters.ts'
import type {Problem} from './problem.ts'
import {reportInto} from './problems.ts'
import {type SettingsValues, settingsReader} from './settings-fields.ts'
import type {SourceText} from './sources.ts'
import {parseYaml} from './yaml/parse-yaml.ts'
import {rootReading} from './yaml/reader.ts'
import {wholeFile, withoutByteOrderMark} from './yaml/yaml-source.ts'

/**
 * Reads cookbook.yaml.
 * @param source absent where the cookbook has none: every setting has a default
 * @returns the settings, with the default for what could not be understood
 */
export function readSettings(source: SourceText | undefined): {
  readonly settings: Settings
  readonly problems: readonly Problem[]
} {
  if (!source) return {settings: settingsOf({}), problems: []}
  const problems: Problem[] = []
  const report = reportInto(problems, source.path)
  reportHiddenCharacters(source.text, report)
  const node = parseYaml(wholeFile(withoutByteOrderMark(source.text)), report)
  const values = node && settingsReader.read(node, rootReading('The file', report))?.value
  return {settings: settingsOf(values ?? {}), problems}
}

/** Fills the defaults in: a European home kitchen with a scale that shows whole grams. */
function settingsOf(values: SettingsValues): Settings {
  const rules = values.rules?.value ?? 'eu'
  const tolerances = Object.values(values.tolerances?.value ?? {}).flatMap((tolerance) =>
    tolerance ? [[tolerance.value.nutrient, tolerance.value] as const] : [],
  )
  const severities = values.checks?.value ?? []
  const print = values.print?.value
  const declare = values.declare?.value
  return {
    title: values.title?.value ?? 'Cookbook',
    description: values.description?.value ?? '',
    language: values.language?.value ?? 'en',
    ...(values.address && {address: values.address.value}),
    currency: values.currency?.value ?? 'EUR',
    scaleGrams: values.scale?.value ?? 1,
    rules,
    // Each law has its own carbohydrate: 21 CFR 101.9(c)(6) counts fibre in, Regulation (EU)
    // 1169/2011 Annex I point 7 leaves it out.
    carbohydrate: values.carbohydrate?.value ?? (rules === 'us' ? 'total' : 'available'),
    ...(values['energy method'] && {energyMethod: values['energy method'].value}),
    ...(declare && declare !== 'plain' && {declare}),
    ...(values['net carbohydrate']?.value && {netCarbohydrate: true}),
    tolerance: values.tolerance?.value ?? 'household',
    tolerances: new Map(tolerances),
    cups: values.cups?.value ?? (rules === 'us' ? 'us' : 'metric'),
    severities: new Map(severities.map(({key, value}) => [key.value, value.value])),
    checks: severities.map(({key}) => key),
    ...(values['label age'] && {labelDays: values['label age'].value}),
    print: {
      paper: print?.paper?.value ?? 'A4',
      cards: print?.cards?.value ?? 'A6',
      ...(print?.sections && {sections: print.sections.value.map(({value}) => value)}),
    },
  }
}
