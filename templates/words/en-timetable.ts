/** Texts of the timetable on a recipe's page. */
export const timetable = {
  title: 'Timetable',
  start: 'Start at',
  readyBy: 'Ready by',
  fromStart: 'From the start',
  step: 'Step',
  handsOn: 'Hands on',
  waiting: 'Waiting',
  ready: 'Ready',
  legend: 'A bar is work, a line is waiting.',
  broken: 'A broken line is longer than drawn.',
  inTurn:
    'Steps follow one another unless the text says “meanwhile”; what else may overlap is not known.',
  shared: (time: string) => `${time} of work that no step tells are shared out evenly.`,
  gaps: (time: string) => `${time} that no step tells are gaps between them.`,
  inWaits: (time: string) => `${time} more of work have to fit into the waiting.`,
  beyond: (time: string) => `The steps take ${time} longer than the recipe says.`,
  open: 'How long it all takes is not said, so steps without a time have none here: allow more.',
  ahead: 'Made ahead, and not in here',
}
