const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
]

/** With the month by its name, so that no reader takes the day for the month. */
function spelt(iso: string, name: (month: string) => string): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso) ?? []
  const named = MONTHS[Number(month) - 1]
  return named === undefined ? iso : `${Number(day)} ${name(named)} ${year}`
}

/** A day as she reads it; it is kept as "2026-11-25" in either language. */
export const DATE_WORDS = {
  /** "25 November 2026"; what is no such date stays as it stands. */
  day: (iso: string): string => spelt(iso, (month) => month),
  /** "25 Nov 2026", in lists and where room is scarce. */
  short: (iso: string): string => spelt(iso, (month) => month.slice(0, 3)),
}
