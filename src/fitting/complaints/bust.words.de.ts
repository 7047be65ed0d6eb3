/** What she reads of the complaints in bust.ts, in German. */
import type { BUST_WORDS as English } from './bust.words.ts'

export const BUST_WORDS: typeof English = {
  B1: {
    said: [
      'an der Brust zu eng',
      'Zugfalten zur Brust',
      'drückt die Brust platt',
      'spannt über dem Busen',
    ],
    where: 'Brustlinie',
    sign: 'Straffe waagerechte Zugfalten zwischen den Brustpunkten oder von der Seite zu ihnen; Verschlüsse spannen, die Seitennaht wird nach vorn gezogen.',
    causes: {
      1: 'nur vorn zu wenig Weite',
      2: 'rundum zu wenig Weite',
      3: 'Rücken zu schmal, er zieht',
      4: 'Brustpunkt an anderer Stelle gezeichnet',
    },
    tests: {
      1: 'Öffne beide Seitennähte von der Achsel bis zur Taille, mit einem Lot an der Seite. Weicht nur die vordere Kante zurück?',
      2: 'Weichen vordere und hintere Kante gleich zurück?',
      3: 'Weicht nur die hintere Kante zurück?',
      4: 'Bleiben die Kanten zu, und zielt der Abnäher an der stärksten Stelle vorbei?',
    },
    trueAfter: [
      'Taille',
      'Seitennähte gleich lang bei gefaltetem Abnäher',
      'Stufe an der vorderen Mitte',
      'Armloch',
    ],
    doNot:
      'Nimm nicht einfach eine Größe mehr: Dann wachsen auch Schulter und Hals. Ist nur das Vorderteil zu schmal, lass nicht die Seite heraus: Dann steht das Armloch ab.',
  },
  B2: {
    said: [
      'der Saum geht vorn hoch',
      'die Taille steigt vorn an',
      'Zug von der seitlichen Taille zur Brust',
    ],
    where: 'unter der Brust, vorderer Saum',
    sign: 'Schräge Zugfalten vom Brustpunkt hinab zur seitlichen Taille; Taillenlinie und Saum heben sich an der vorderen Mitte.',
    causes: {
      1: 'vorn über der Brust zu kurz',
      2: 'an der Brust eng',
      3: 'unter der Taille fülliger',
    },
    tests: {
      1: 'Schneide an der vorderen Mitte unter der Brust waagerecht ein. Öffnet es sich in der Mitte und an der Seite nicht?',
      2: 'Öffnet es sich auch in der Breite?',
    },
    trueAfter: ['Seitennähte gleich lang bei gefaltetem Abnäher', 'Taillennaht', 'Saum'],
    doNot:
      'Verlängere nicht nur den Saum in der Mitte: Der Abnäher bleibt dann zu klein. Setz dafür nicht den Rücken tiefer.',
  },
  B3: {
    said: [
      'an der Brust zu weit',
      'fällt vorn zusammen',
      'über der Brust ist Luft',
      'Falten über der Brust',
    ],
    where: 'Brust',
    sign: 'Lose Falten am Brustpunkt, senkrecht oder im Bogen; das Ende des Abnähers steht leer.',
    causes: {
      1: 'Vorderteil für eine fülligere Brust gezeichnet',
      2: 'rundum zu weit',
      3: 'Brustpunkt in anderer Höhe gezeichnet',
    },
    tests: {
      1: 'Steck eine senkrechte Falte durch den Brustpunkt bis zur Taille ab. Verschwinden die Falten, und sitzen die Schultern richtig?',
      2: 'Ist hinten ebenso viel lose Weite?',
      3: 'Zielt der Abnäher über oder unter die stärkste Stelle?',
    },
    trueAfter: [
      'Taille',
      'Seitennähte gleich lang bei gefaltetem Abnäher',
      'vordere Mitte',
      'Armloch',
    ],
    doNot: 'Lass keinen Abnäher stehen, der schmaler als 10 mm ist: Mach ihn zu Mehrweite.',
  },
  B4: {
    said: ['der Abnäher ist spitz', 'der Abnäher läuft über die Brust'],
    where: 'Abnäherspitzen',
    sign: 'Die Spitze liegt an der stärksten Stelle oder dahinter und drückt sich spitz durch.',
    causes: { 1: 'Abnäher zu lang', 2: 'Brustpunkt weiter weg als gezeichnet' },
    tests: {
      1: 'Zeichne den Brustpunkt auf dem Probeteil an. Trifft ihn die Mittellinie des Abnähers, und ist nur die Spitze zu nah?',
      2: 'Zielt der Abnäher am Brustpunkt vorbei, darüber oder darunter?',
    },
    trueAfter: ['Abnäherschenkel gleich lang', 'Falte des Abnähers an der Naht'],
    doNot: 'Versetze den Brustpunkt nicht, wenn nur die Länge nicht stimmt.',
  },
  B5: {
    said: ['Brustpunkt an der falschen Stelle', 'Abnäher zu hoch', 'Abnäher zu tief'],
    where: 'Brustabnäher und Taillenabnäher',
    sign: 'Der Abnäher zielt über oder unter die stärkste Stelle; auf der anderen Seite davon ist es lose oder spannt.',
    causes: {
      1: 'Brustpunkt in anderer Höhe als gezeichnet',
      2: 'Schultern fallen stärker ab, und alles hängt tief',
      3: 'andere Unterwäsche als beim Messen',
    },
    advice: {
      3: 'Probier es über dem an, was du darunter tragen willst; der Schnitt bleibt.',
    },
    tests: {
      1: 'Miss mit dem Maßband vom Halspunkt zum Brustpunkt. Ist die Länge anders als im Schnitt?',
      2: 'Sitzt auch das Armloch um ebenso viel tiefer oder höher?',
    },
    trueAfter: ['Seitennaht bei gefaltetem Abnäher', 'Taillenabnäher neu ausgerichtet'],
    doNot:
      'Ändere nicht den Abnäherinhalt, während er wandert. Erst die Weite vorn, dann die Höhe.',
  },
  B6: {
    said: ['die Abnäher stehen zu weit auseinander', 'die Abnäher stehen zu eng beieinander'],
    where: 'Taillenabnäher und Brustabnäher',
    sign: 'Die Mittellinie des Taillenabnähers geht seitlich am Brustpunkt vorbei.',
    causes: {
      1: 'Brustpunkte zu weit auseinander oder zu eng gezeichnet',
      2: 'Vorderteil dazwischen zu breit oder zu schmal',
    },
    tests: {
      1: 'Miss mit dem Maßband von Brustpunkt zu Brustpunkt. Ist die Breite anders als im Schnitt?',
    },
    trueAfter: ['Taillennaht', 'Abnäherschenkel'],
    doNot:
      'Dreh den Abnäher nicht mehr als 10 Grad um seine Öffnung: Verschieb ihn lieber, wie er ist.',
  },
  B7: {
    said: [
      'der Abnäher zieht am Ende Fältchen',
      'Delle an der Abnäherspitze',
      'der Abnäher macht eine Tüte',
    ],
    where: 'Abnäherspitze',
    sign: 'Eine Tüte oder Beule ganz am Ende.',
    causes: {
      1: 'ein Abnäher nimmt zu viel auf',
      2: 'stumpf genäht',
      3: 'platt gebügelt',
      4: 'Spitze zu nah am Brustpunkt',
    },
    advice: {
      2: 'Näh die letzten Stiche am Bruch entlang aus; der Schnitt bleibt.',
      3: 'Bügle ihn über etwas Rundem; der Schnitt bleibt.',
    },
    tests: {
      1: 'Ist der Winkel des Abnähers über 22 Grad oder seine Öffnung über 44 mm breit?',
      2: 'Liegt der Abnäher gut, wenn er fein ausgenäht und über einer Rundung gebügelt ist?',
    },
    trueAfter: ['beide Abnäher'],
    doNot: 'Kürze den Abnäher nicht, um die Beule zu verstecken.',
  },
  B8: {
    said: [
      'das Armloch steht vorn ab',
      'das Armloch klafft',
      'man sieht am Arm in die Bluse',
      'vorn am Arm zu weit',
      'die Ärmelkante steht ab',
    ],
    where: 'untere Hälfte des vorderen Armlochs, meist ohne Ärmel',
    sign: 'Eine lose Schlaufe am vorderen Armloch und eine weiche Falte, die zum Brustpunkt zeigt.',
    causes: {
      1: 'Brust fülliger, als die Abnäher fassen',
      2: 'mit Ärmel gezeichnet und ohne getragen',
      3: 'Armloch zu lang und zu tief',
      4: 'Schulter fällt stärker ab oder ist zu lang',
      5: 'Kante beim Nähen gedehnt',
    },
    advice: {
      5: 'Das Armloch ist genäht länger als gezeichnet. Sichere es gleich nach dem Zuschneiden mit einer Stütznaht; der Schnitt bleibt.',
    },
    never:
      'Ein abstehendes Armloch nimmst du nicht an der Seitennaht weg: Das macht die Brust eng, und es steht weiter ab. Steck am Armloch einen flachen Keil ab, zum Brustpunkt hin auf null.',
    tests: {
      1: 'Steck einen flachen Keil ab, breit am Armloch, zum Brustpunkt hin auf null. Ist es dann gut, und bleibt die Seite im Lot?',
      2: 'Ist es besser, wenn du am Schulterpunkt absteckst?',
      3: 'Ist es gut, wenn du die Seitennaht anhebst?',
      4: 'Ist die genähte Kante mehr als 3 mm länger als im Schnitt?',
    },
    trueAfter: [
      'Armloch an Seite und Schulter',
      'Seitennaht bei gefaltetem Abnäher',
      'Armkugel um ebenso viel kürzer',
    ],
    doNot:
      'Nimm es nicht an der Seitennaht weg. Nimm im Armloch eines Schnitts mit Ärmel nichts weg, ohne die Armkugel zu ändern. Halte höchstens 6 mm ein.',
  },
  B9: {
    said: [
      'oben auf der Brust ist zu viel Stoff',
      'oberhalb der Brust eingefallen',
      'vorn oberhalb der Brust zu lang',
    ],
    where: 'zwischen Schlüsselbein und Brust',
    sign: 'Lose Querfalten oben auf der Brust; der Fadenlauf sinkt in der Mitte, der Halsausschnitt kann abstehen.',
    causes: {
      1: 'Mulde oberhalb der Brust',
      2: 'Vorderteil oberhalb der Brust lang',
      3: 'gebeugte Haltung, der Körper ist vorn kurz',
    },
    tests: {
      1: 'Steck in der Mitte eine Querfalte ab, zum Armloch auf null. Liegt alles glatt?',
      2: 'Muss die Falte bis über das Armloch weiterlaufen?',
    },
    trueAfter: ['Mitte gerade', 'Halsausschnitt', 'vordere Schulter', 'Beleg'],
    doNot:
      'Nimm für dieselbe lose Weite nicht auch noch einen Keil am Hals heraus. Schieb die Länge nicht unter die Taille.',
  },
  B10: {
    said: ['oben auf der Brust zu breit'],
    where: 'vorn, innerhalb des Armlochs',
    sign: 'Lose Weite längs zwischen Hals und Armloch.',
    causes: { 1: 'Brustbreite zu groß', 2: 'Schulter zu lang' },
    tests: {
      1: 'Steck von der Schultermitte aus eine Längsfalte ab. Endet sie oberhalb der Brust?',
      2: 'Liegt die Schulternaht außerhalb des Knochens?',
    },
    trueAfter: ['Armloch', 'vordere Armkugel'],
    doNot: 'Führ die Falte nicht bis zur Taille hinunter.',
  },
  B11: {
    said: ['spannt zwischen den Armlöchern', 'oben auf der Brust zu schmal'],
    where: 'obere Brust',
    sign: 'Waagerechte Spannung von Armloch zu Armloch; das vordere Armloch schneidet ein.',
    causes: {
      1: 'Brustbreite zu schmal',
      2: 'gerade oder vorgeschobene Schultern',
      3: 'an der Brust eng',
    },
    tests: {
      1: 'Schneide von der Schultermitte senkrecht bis zum Passzeichen ein. Öffnet es sich?',
      2: 'Lässt es nach, wenn du die Schulternaht am Schulterpunkt öffnest?',
      3: 'Lässt es nach, wenn du die Seite auf Brusthöhe öffnest?',
    },
    trueAfter: ['Armloch', 'Armkugel'],
    doNot: 'Höhle dafür nicht das Armloch aus: Das macht es noch schmaler.',
  },
  B12: {
    said: ['die Knopfleiste klafft', 'die Bluse geht zwischen den Knöpfen auf'],
    where: 'vordere Mitte an der Brust',
    sign: 'Eine Lücke wie eine Raute, mit waagerechter Spannung.',
    causes: {
      1: 'an der Brust eng',
      2: 'kein Knopf auf Brusthöhe',
      3: 'keine Mehrweite',
    },
    advice: {
      2: 'Setz einen Knopf auf die Brustlinie und teile die übrigen von dort aus ein; der Schnitt bleibt.',
    },
    tests: {
      1: 'Bleiben die Mittellinien aufgeknöpft auseinander?',
      2: 'Treffen sich die Mittellinien, und sitzt auf der Brustlinie kein Knopf?',
    },
    trueAfter: ['Taille', 'Seitennähte gleich lang bei gefaltetem Abnäher', 'vordere Mitte'],
    doNot: 'Mach nicht nur den Übertritt breiter.',
  },
  B13: {
    said: ['unter der Brust zu locker', 'Luft unter der Brust'],
    where: 'von unter der Brust bis zur Taille',
    sign: 'Lose Weite längs unter der Brust.',
    causes: {
      1: 'Taillenabnäher zu schmal oder zu kurz',
      2: 'eine tiefe Mulde unter der Brust',
    },
    tests: { 1: 'Steck an der Abnäherlinie unter der Brust ab. Verschwindet die lose Weite?' },
    trueAfter: ['Abnäherschenkel gleich lang', 'Taille'],
    doNot: 'Forme nichts oberhalb des Brustpunkts.',
  },
  B14: {
    said: ['Falten quer unter der Brust', 'vorn hängt es durch'],
    where: 'vorn zwischen Brust und Taille',
    sign: 'Eine Querfalte oder ein Bausch unter der Brust; der Fadenlauf sinkt an der Mitte der Brustlinie.',
    causes: {
      1: 'vorn von der Schulter zur Taille zu lang',
      2: 'Brustpunkt zu tief gezeichnet',
      3: 'Taille rundum zu tief',
    },
    tests: {
      1: 'Heb das Vorderteil am Halsende der Schulter an. Ist es dann gut?',
      2: 'Ist es nur mit einer Falte in der Taille gut?',
      3: 'Zielt der Abnäher unter die stärkste Stelle?',
    },
    trueAfter: ['Schulter', 'Halsausschnitt', 'Passzeichen am Armloch'],
    doNot: 'Schieb den Überschuss nicht unter die Taillennaht.',
  },
  B15: {
    said: ['straffer Zug von der Schulter zur Brust hinunter'],
    where: 'Halspunkt bis Brustpunkt',
    sign: 'Eine straffe schräge Zugfalte vom Halspunkt zum Brustpunkt.',
    causes: {
      1: 'vorn vom Halspunkt über die Brust zu kurz',
      2: 'Schulter zu steil gezeichnet',
      3: 'an der Brust eng',
    },
    tests: {
      1: 'Öffne die Schulter am Halsende. Lässt es nach?',
      2: 'Lässt es nach, wenn du die Schulter am Schulterpunkt öffnest?',
    },
    trueAfter: ['Halsausschnitt', 'Schulter'],
    doNot: 'Mach den Hals nicht weiter.',
  },
}
