import type { OPTION_WORDS as English } from './options.words.ts'

export const OPTION_WORDS: typeof English = {
  overarmRule: {
    label: 'Länge der Oberarmnaht',
    does: 'Woher die Länge der Oberarmnaht kommt.',
    words: {
      auto: 'nach dem Maßband, wenn gemessen, sonst vom Achselpunkt her',
      found: 'vom Achselpunkt her gefunden',
      struck: 'ein Zirkelschlag vom Halspunkt aus, wie von Hand gezeichnet',
    },
  },
  construction: {
    label: 'Konstruktion',
    does: 'Die Regel für eine Zahl, die das Maßband nicht gegeben hat. Was gemessen ist, gilt bei allen dreien.',
    words: {
      measured: 'nach deinen eigenen Maßen',
      neckFifths: 'metrisch, nach Fünfteln der Halsweite',
      bustShares: 'proportional, nach Anteilen der Brust',
    },
  },
  neckShape: {
    label: 'Form des Ausschnitts',
    does: 'Die Linie des Halsausschnitts. Ein U-Boot-Ausschnitt braucht mehr Breite und weniger Tiefe, ein tiefer runder mehr Tiefe.',
    words: {
      round: 'rund',
      square: 'eckig',
      vee: 'V',
      boat: 'U-Boot',
      scoop: 'tief und rund',
    },
  },
  shaping: {
    label: 'Form der Taille',
    does: 'Abnäher folgen der Taille; gerade fällt das Stück von der Brust an.',
    words: {
      darts: 'Taillenabnäher',
      straight: 'gerade, ohne Abnäher',
    },
  },
  waistDarts: {
    label: 'Taillenabnäher je Hälfte',
    does: 'Zwei schmale Abnäher folgen der Taille weicher als einer; nicht für einen kleinen Überschuss, den einer fasst.',
    words: {
      asNeeded: 'einer, ein zweiter, wo einer zu breit wäre',
      two: 'zwei',
    },
  },
  surplus: {
    label: 'was ein Abnäher nicht fasst',
    does: 'Wohin der Überschuss in der Taille geht, wenn ein Abnäher zu breit wäre.',
    words: {
      auto: 'mehr an der Seite, dann ein zweiter Abnäher, dann die hintere Mitte',
      twoDarts: 'gleich ein zweiter Abnäher',
      centreBack: 'die hintere Mitte vor einem zweiten Abnäher',
    },
  },
  dartAt: {
    label: 'Brustabnäher',
    does: 'Wo der Abnäher liegt, der die Brust formt. Seine Spitze bleibt überall vom Brustpunkt weg.',
    words: {
      side: 'in der Seite',
      shoulder: 'in der Schulter',
      neck: 'im Hals',
      armhole: 'im Armloch',
      french: 'tief in der Seite, schräg nach oben',
      waist: 'in der Taille',
      centreFront: 'in der vorderen Mitte',
    },
  },
  dartSecond: {
    label: 'zweiter Brustabnäher',
    does: 'Ein breiter Abnäher liegt als zwei besser; der verlegte Betrag wird in der Seite gemessen.',
    words: {
      none: 'keiner',
      shoulder: 'in der Schulter',
      neck: 'im Hals',
      armhole: 'im Armloch',
      french: 'tief in der Seite, schräg nach oben',
      waist: 'in der Taille',
      centreFront: 'in der vorderen Mitte',
    },
  },
  dartAs: {
    label: 'Brustabnäher genäht als',
    does: 'Eingereihte Weite nimmt auf, was der Abnäher falten würde. Eine Teilungsnaht teilt das Vorderteil von Schulter oder Armloch über die Brust bis zum Saum.',
    words: {
      dart: 'Abnäher',
      gathers: 'eingereihte Weite',
      seam: 'Teilungsnaht',
    },
  },
  opening: {
    label: 'Öffnung',
    does: 'Wie du hineinkommst. Was Hals und Taille noch brauchen, kommt von selbst dazu.',
    words: {
      auto: 'nach Bedarf',
      sideZip: 'Reißverschluss in der linken Seite',
      backZip: 'Reißverschluss in der hinteren Mitte',
      buttonedFront: 'vorn geknöpft',
      neckSlit: 'Halsschlitz hinten mit Schlinge',
      keyhole: 'Tropfenausschnitt vorn mit Schlinge',
      none: 'noch keine',
    },
  },
  skirt: {
    label: 'Rock',
    does: 'Was in der Taille an das Oberteil genäht wird. Ein gerader Rock braucht Schlitze zum Gehen.',
    words: {
      straight: 'gerade, seine Abnäher treffen die des Oberteils',
      flared: 'ab der Hüfte ausgestellt, seine Abnäher treffen die des Oberteils',
      quarterCircle: 'Viertelteller',
      halfCircle: 'halber Teller',
      fullCircle: 'ganzer Teller',
    },
  },
  waistFinish: {
    label: 'Taillennaht innen',
    does: 'Ein Beleg deckt die Naht und hält die Taille auf ihrer Länge.',
    words: {
      seam: 'nur die Naht',
      facing: 'geformter Beleg über der Naht',
    },
  },
  sleeveEnd: {
    label: 'Ärmelende',
    does: 'Eine Manschette fasst die Weite des Ärmels; wo eine Hand nicht hindurchgeht, kommt ein Schlitz dazu. Ein Saum ohne Schlitz bleibt so weit, dass eine Hand hindurchgeht.',
    words: { hem: 'Saum', hemSlit: 'Saum mit eingefasstem Schlitz', cuff: 'Manschette' },
  },
  neckFinish: {
    label: 'Abschluss am Hals',
    does: 'Ein Schrägstreifen legt sich um jede Rundung; ein geformter Beleg liegt auf festem Stoff flacher.',
    words: {
      biasStrip: 'Schrägstreifen',
      facing: 'geformter Beleg',
    },
  },
}
