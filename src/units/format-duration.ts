const minutesPerHour = 60
const minutesPerDay = 24 * minutesPerHour

const daysPerMonth = 30

/** A keeping time: `2 h`, `4 days`, `3 months` (of 30 days). @param days above 0 */
export function formatDays(days: number): string {
  const months = days / daysPerMonth
  if (Number.isInteger(months)) return months === 1 ? '1 month' : `${months} months`
  return days === 1 ? '1 day' : formatMinutes(days * minutesPerDay)
}

/** A time as front matter has it: `20 min`, `1 h 30 min`, `3 days`. @param minutes above 0 */
export function formatMinutes(minutes: number): string {
  const whole = Math.round(minutes)
  if (whole >= 2 * minutesPerDay && whole % minutesPerDay === 0) {
    return `${whole / minutesPerDay} days`
  }
  const hours = Math.floor(whole / minutesPerHour)
  const rest = whole % minutesPerHour
  return [hours > 0 ? `${hours} h` : '', rest > 0 || hours === 0 ? `${rest} min` : '']
    .filter((part) => part !== '')
    .join(' ')
}
