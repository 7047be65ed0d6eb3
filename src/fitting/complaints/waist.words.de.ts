/** What she reads of the complaints in waist.ts, in German. */
import type { WAIST_WORDS as English } from './waist.words.ts'

export const WAIST_WORDS: typeof English = {
  W1: {
    said: ['die Taille rutscht rundum hoch', 'im Oberteil zu kurz', 'die Taille sitzt zu hoch'],
    where: 'Taille',
    sign: 'Die Taillenlinie des Probeteils liegt rundum über dem Gummiband in der Taille.',
    causes: {
      1: 'zwischen Brust und Taille rundum zu kurz',
      2: 'enge Hüfte oder Taille schiebt es hoch',
      3: 'enge Brust hebt es an',
    },
    tests: {
      1: 'Miss vorn, an der Seite und hinten von der gezeichneten Linie zum Gummiband. Ist es überall gleich?',
      2: 'Sinkt es, wenn du die Seite unter der Taille öffnest?',
      3: 'Sinkt es, wenn du die Seite auf Brusthöhe öffnest?',
    },
    trueAfter: ['Seitennähte', 'Abnäherlängen'],
    doNot: 'Setz keinen Keil ein, bevor rundum gleich viel zugegeben ist.',
  },
  W2: {
    said: ['die Taille sitzt zu tief', 'im Oberteil zu lang'],
    where: 'Taille',
    sign: 'Querfalten rundum, dicht über der Taille.',
    causes: {
      1: 'zwischen Brust und Taille rundum zu lang',
      2: 'auch vom Hals zum Armloch zu lang',
    },
    tests: {
      1: 'Steck 60 mm über der Taille rundum eine Querfalte ab. Verschwinden die Falten?',
      2: 'Liegen auch über der Achselhöhe Falten?',
    },
    trueAfter: ['Seite', 'Abnäher'],
    doNot:
      'Kürze nicht rundum für eine Falte, die nur an der hinteren oder nur an der vorderen Mitte liegt.',
  },
  W3: {
    said: ['in der Taille zu eng', 'die Naht rollt in der Taille hoch'],
    where: 'Taille',
    sign: 'Waagerechte Spannung in der Taille, die Abnäher stehen unter Zug.',
    causes: {
      1: 'zu viel Weite weggenommen oder zu wenig Mehrweite',
      2: 'nach dem Essen oder im Sitzen',
    },
    advice: { 2: 'Probier es im Stehen und vor dem Essen an; der Schnitt bleibt.' },
    tests: {
      1: 'Öffne die Seitennaht oder die hintere Naht in der Taille. Geht sie im bequemen Stehen auseinander?',
      2: 'Drückt es nur im Sitzen?',
    },
    trueAfter: ['Taille', 'was daran hängt'],
    doNot: 'Lass eine Naht allein nicht mehr als 10 mm je Kante heraus.',
  },
  W4: {
    said: ['Längsfalten in der Taille', 'die Taille ist sackig'],
    where: 'Taille',
    sign: 'Längsfalten, über die ganze Breite der Taille verteilt.',
    causes: { 1: 'zu wenig Weite weggenommen' },
    tests: { 1: 'Steck an Abnähern und Seiten ab. Liegt es an?' },
    trueAfter: ['Taille'],
    doNot: 'Lass rund um die Taille 19 bis 25 mm Mehrweite.',
  },
  W5: {
    said: ['die Taille hängt vorn'],
    where: 'vordere Mitte in der Taille',
    sign: 'Die gezeichnete Waagerechte sinkt an der vorderen Mitte.',
    causes: { 1: 'vorn zu lang', 2: 'hinten zu kurz' },
    tests: {
      1: 'Miss an der vorderen und der hinteren Mitte bis zum Boden. Liegt die Linie nur vorn tief?',
      2: 'Liegt die Linie hinten hoch?',
    },
    trueAfter: [],
    doNot: 'Gleiche es nicht am Saum aus.',
  },
  W6: {
    said: ['die Seitennaht kippt nach vorn', 'die Seitennaht hängt am Saum nicht im Lot'],
    where: 'Seitennaht',
    sign: 'Die Naht hängt nicht im Lot: Unten schwingt sie nach vorn, oder oben wird sie nach vorn gezogen.',
    causes: {
      1: 'vorn über der Brust eng oder kurz',
      2: 'in der hinteren Taille angehoben',
      3: 'Naht an der falschen Stelle gezeichnet',
    },
    tests: {
      1: 'Häng ein Lot an die Achsel. Neigt sich nur der obere Teil nach vorn?',
      2: 'Ist die hintere Taille angehoben?',
      3: 'Ist die Naht gerade und im Lot, nur zu weit hinten?',
    },
    trueAfter: ['Seitennähte gleich lang'],
    doNot: 'Versetze die Naht nicht, bevor die Balance stimmt.',
  },
  W7: {
    said: ['die Seitennaht kippt nach hinten'],
    where: 'Seitennaht',
    sign: 'Unten hängt die Naht nach hinten.',
    causes: {
      1: 'hinten eng oder kurz',
      2: 'vorn zu lang',
      3: 'Naht an der falschen Stelle gezeichnet',
    },
    tests: {
      1: 'Häng ein Lot an die Achsel. Ist der Rücken angehoben, oder spannt er?',
      2: 'Ist vorn lose Länge?',
      3: 'Ist die Naht gerade und im Lot, nur zu weit vorn?',
    },
    trueAfter: ['Seitennähte gleich lang'],
    doNot: 'Versetze die Naht nicht, bevor die Balance stimmt.',
  },
  W8: {
    said: ['die Seitennaht macht ein S'],
    where: 'Seitennaht',
    sign: 'Die Naht macht an der Brust einen Bogen nach vorn oder in der Taille einen nach hinten.',
    causes: {
      1: 'an der Brust eng',
      2: 'vordere und hintere Abnäher nehmen ungleich viel auf',
    },
    tests: {
      1: 'Ist der Bogen an der Brust am größten?',
      2: 'Ist der Bogen in der Taille am größten?',
    },
    trueAfter: ['Seite'],
    doNot: 'Richte nicht allein die Naht gerade.',
  },
  W9: {
    said: ['der Saum schiebt sich hoch', 'Falten über der Hüfte', 'bleibt an der Hüfte hängen'],
    where: 'Hüfte',
    sign: 'Waagerechte Spannung an der Hüfte, Falten hinten über der Taille.',
    causes: {
      1: 'zu wenig Weite an der Hüfte',
      2: 'Abnäher unter der Taille zu lang',
    },
    tests: {
      1: 'Öffne die Seitennaht von der Taille abwärts. Geht sie auseinander?',
      2: 'Endet die Spannung an der unteren Spitze eines Abnähers?',
    },
    trueAfter: ['Seitenrundung', 'Saum'],
    doNot: 'Erst die Hüfte, dann die Querfalten im Kreuz; nicht umgekehrt.',
  },
  W10: {
    said: ['spannt vorn unter der Taille', 'der Saum steht vorn weg'],
    where: 'vorn unter der Taille',
    sign: 'Dort spannt es, und der Saum hebt sich an der vorderen Mitte.',
    causes: { 1: 'vorn fehlen Länge und Weite unter der Taille' },
    tests: { 1: 'Schneide unter der Taille quer ein. Öffnet es sich an der vorderen Mitte?' },
    trueAfter: ['Taille', 'Saum'],
    doNot: 'Verlängere nicht nur den Saum in der Mitte.',
  },
  W11: {
    said: ['der Saum hängt an den Seiten', 'der Saum hängt hinten', 'der Saum ist schief'],
    where: 'Saum',
    sign: 'Der Saum läuft nicht gleich hoch über dem Boden.',
    causes: {
      1: 'eine Schulter tiefer',
      2: 'vorn und hinten nicht in Balance',
      3: 'der Stoff hat sich im schrägen Fadenlauf gesenkt',
    },
    advice: {
      3: 'Lass es einen Tag hängen und zeichne den Saum vom Boden aus an; der Schnitt bleibt.',
    },
    tests: {
      1: 'Neigen sich die Waagerechten darüber zu einer Seite?',
      2: 'Kippen die Waagerechten von vorn nach hinten?',
      3: 'Sind die Linien darüber waagerecht, und nur der Saum ist es nicht?',
    },
    trueAfter: [],
    doNot: 'Begradige nie den Saum, um einen Fehler der Balance zu verstecken.',
  },
  W12: {
    said: ['Beule unter der Taille'],
    where: 'unteres Ende eines Taillenabnähers',
    sign: 'Eine Beule an der unteren Spitze.',
    causes: {
      1: 'Abnäher unter der Taille zu lang',
      2: 'zu wenig Mehrweite an der Hüfte',
    },
    tests: {
      1: 'Liegt die Spitze unter der stärksten Stelle?',
      2: 'Wird es flach, wenn du die Seite an der Hüfte öffnest?',
    },
    trueAfter: ['Abnäherschenkel'],
    doNot: 'Lass dafür nicht die Taille heraus.',
  },
}
