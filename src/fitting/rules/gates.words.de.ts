import type { Level } from './gates.ts'
import type { GATE_WORDS as English } from './gates.words.ts'

const AT: Readonly<Record<Level, string>> = {
  bust: 'an der Brust',
  waist: 'in der Taille',
  hip: 'an der Hüfte',
}
const THE: Readonly<Record<Level, string>> = {
  bust: 'die Brust',
  waist: 'die Taille',
  hip: 'die Hüfte',
}

export const GATE_WORDS: typeof English = {
  notTight: (level, ease, enough) =>
    `Nach seinen Zahlen hat der Schnitt ${AT[level]} ${ease} mm Mehrweite; ab ${enough} mm ist es dort nicht eng. Miss ${THE[level]} noch einmal, und das Probeteil dort rundum, bevor etwas geändert wird.`,
  notLoose: (level, ease, least) =>
    `Nach seinen Zahlen hat der Schnitt ${AT[level]} nur ${ease} mm Mehrweite; ${least} mm sind das Mindeste. Miss ${THE[level]} noch einmal, bevor etwas weggenommen wird.`,
  tooLittle: (id, level, round, left, least) =>
    `${id}: ${round} mm rundum weniger ließen ${AT[level]} ${left} mm Mehrweite; ${least} mm sind das Mindeste. Steck es noch einmal ab und steh dabei locker.`,
  tapeAgain: (level) =>
    `Miss ${THE[level]} noch einmal: Was dort abgesteckt wurde, spricht gegen die Zahl.`,
}
