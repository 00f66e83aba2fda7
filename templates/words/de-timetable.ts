import type {timetable as english} from './en-timetable.ts'

export const timetable: typeof english = {
  title: 'Zeitplan',
  start: 'Beginn um',
  readyBy: 'Fertig um',
  fromStart: 'Ab Beginn',
  step: 'Schritt',
  handsOn: 'Arbeit',
  waiting: 'Warten',
  ready: 'Fertig',
  legend: 'Ein Balken ist Arbeit, eine Linie ist Warten.',
  broken: 'Eine gestrichelte Linie ist länger, als sie gezeichnet ist.',
  inTurn:
    'Die Schritte folgen aufeinander, wo der Text nichts nebeneinander legt („meanwhile“); was sich sonst überlappen kann, ist nicht bekannt.',
  shared: (time) => `${time} Arbeit, die kein Schritt nennt, sind gleichmäßig verteilt.`,
  gaps: (time) => `${time}, die kein Schritt nennt, sind Lücken dazwischen.`,
  inWaits: (time) => `Weitere ${time} Arbeit müssen in die Wartezeiten passen.`,
  beyond: (time) => `Die Schritte dauern ${time} länger, als das Rezept sagt.`,
  open: 'Wie lange alles dauert, steht nicht da; Schritte ohne Zeit haben hier keine: mehr einplanen.',
  ahead: 'Im Voraus gemacht und hier nicht enthalten',
}
