/** The day on which labels of the fixtures are looked at. */
export const fixtureDay = '2026-11-01'
