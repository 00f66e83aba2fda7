import type {en} from './en.ts'

export const cooking: (typeof en)['cooking'] = {
  title: 'Wie viel es werden soll',
  servings: 'Portionen',
  batches: 'Mengen',
  have: 'Gramm, die da sind',
  haveOf: 'von',
  tin: 'Form, die da ist',
  awake: 'Bildschirm anlassen',
  again: 'Wie geschrieben',
  csv: 'Mengen und Zahlen (CSV)',
  jsonld: 'Für Maschinen (JSON-LD)',
  csvColumns: {
    ingredient: 'Zutat',
    grams: 'Gramm',
    total: 'Ganze Menge',
    serving: 'Eine Portion',
  },
  script: {
    copy: 'Als Text kopieren',
    copied: 'Kopiert.',
    copyBelow: 'Den Text darunter markieren und kopieren.',
    scaled: 'Jede Menge × {factor}; Zeiten und Temperaturen wachsen nicht mit.',
    scaledServings: '{servings} statt {written}',
    choosing: {
      chosen:
        'Gerechnet {choices}. Angegeben, deklariert, ausgelobt und verglichen ist das Rezept, wie es geschrieben ist.',
      with: 'mit {name}',
      insteadOf: 'mit {name} statt {written}',
      putIn: '{name} dazugeben',
      takeInstead: 'Stattdessen {name} nehmen',
    },
    tick: 'Fertig: {what}',
    servingCount: {one: '{count} Portion', many: '{count} Portionen'},
    timers: 'Wecker',
    startTimer: 'Wecker stellen: {time}',
    timerOf: '{time}, Schritt {step}',
    timerEnded: 'Die Zeit ist um',
    stopTimer: 'Aus',
  },
}
