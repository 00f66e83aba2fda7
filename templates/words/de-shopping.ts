import type {en} from './en.ts'

export const list: (typeof en)['list'] = {
  makeFirst: 'Selbst zu machen',
  ofBatch: '{percent} % einer Rezeptmenge',
  optional: 'und {amount} nach Belieben',
  onlyOptional: 'nach Belieben',
  pieces: 'etwa {count} {size}',
  packs: '{count} × {weight}',
  left: '{amount} bleiben übrig',
  money: '{amount} {currency}',
  cost: 'Die Packungen kosten {money}.',
  costAtLeast: 'Die Packungen kosten mindestens {money}: nicht alles hat einen Preis.',
  empty: 'Portionen wählen, dann steht hier die Liste.',
  count: '{count} zu kaufen',
}

export const shopping: (typeof en)['shopping'] = {
  title: 'Einkaufsliste',
  intro:
    'Gewichte wie gekauft, mit Schale und Knochen, aufgerundet. Fonds, Teige und Soßen sind zerlegt in das, woraus sie gemacht werden.',
  choose: 'Portionen wählen',
  find: 'Ein Rezept finden',
  result: 'Zu kaufen',
  plans: 'Listen zu den Plänen',
  noPlans:
    'Dieses Kochbuch hat keine Pläne. Mit Skripten lassen sich hier die Portionen jedes Rezepts wählen.',
  clear: 'Von vorn',
  offline: 'Nach einem Besuch öffnet sich diese Seite auch ohne Netz.',
  own: 'Sonst noch zu kaufen',
  add: 'Hinzufügen',
  copyList: 'Liste kopieren',
  copyLink: 'Link dazu kopieren',
  script: {
    batches: 'Rezeptmengen',
    more: 'und {count} weitere: mehr vom Namen eingeben',
    noneFound: 'Kein Rezept heißt so.',
    fetching: 'Wird geladen …',
    failed: 'Lässt sich nicht laden: Gibt es ein Netz?',
    incomplete: 'Nicht auf der Liste, weil es sich nicht laden lässt: {names}.',
    own: 'Von Hand dazu',
    remove: '{name} von der Liste nehmen',
    had: 'Im Haus: {name}',
    copied: 'Kopiert.',
    copyBelow: 'Den Text darunter markieren und kopieren.',
  },
}
