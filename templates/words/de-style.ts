import type {stylePage as english} from './en-style.ts'

export const stylePage: typeof english = {
  title: 'Gestaltung',
  intro:
    'Woraus diese Seiten gemacht sind: Emaille, ein weißer Körper mit blauem Rand, schwarz bedruckt. Jedes Zeichen geht auch in einer Farbe, und nichts wird von anderswo geladen.',
  type: 'Schrift',
  typeText:
    'Namen, Überschriften und Zahlen, die auf Armlänge zu lesen sind, stehen in der Druckschrift, was sie erklärt, in der schlichten. Beide sind Schriften des eigenen Geräts.',
  note: 'Kleiner und leiser: Quellen, Bedingungen, was nebenbei gesagt wird.',
  colours: 'Farben',
  colour: {
    paper: 'Papier: der Grund jeder Seite',
    tint: 'Tönung: worauf gezeigt wird',
    ink: 'Tinte: Text',
    soft: 'Leise: Anmerkungen und Beschriftungen',
    rule: 'Linie: zwischen Zeilen',
    rim: 'Rand: Überschriften, Verweise, der Rücken einer Liste, Balken',
    band: 'Band: der Kopf der Seite',
  },
  controls: 'Bedienung',
  button: 'Ein Knopf',
  field: 'Ein Feld',
  choice: 'Eine Wahl',
  shownOn: 'Gezeigt an',
  list: 'Eine Liste zum Wiegen',
  card: 'Eine Karte',
}
