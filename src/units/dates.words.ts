/** A day as she reads it; it is kept as "2026-11-25" in either language. */
export const DATE_WORDS = {
  day: (iso: string): string => iso,
}
