import { capital } from '../units/capital.ts'
import type * as English from './choices.words.ts'

const COMMON = 'Handwerksbrauch, ohne Quelle'

export const CHOICE_WORDS: typeof English.CHOICE_WORDS = {
  easeBust: {
    label: 'Mehrweite je Brustviertel',
    does: 'Bewegungsweite an der Brust, ein Viertel davon auf jeder Hälfte.',
    source: `${COMMON}; 88 mm rundum liegen im Bereich der Mehrweitentabellen für Blusen`,
  },
  easeWaist: {
    label: 'Mehrweite je Taillenviertel',
    does: 'Weite in der Taille, ein Viertel davon auf jeder Hälfte.',
    source: COMMON,
  },
  easeHip: {
    label: 'Mehrweite je Hüftviertel',
    does: 'Weite an der Hüfte, ein Viertel davon auf jeder Hälfte.',
    source: COMMON,
  },
  easeHighHip: {
    label: 'Mehrweite je Viertel hohe Hüfte',
    does: 'Weite an der hohen Hüfte, ein Viertel davon auf jeder Hälfte.',
    source: COMMON,
  },
  frontShare: {
    label: 'Vorderteil breiter als Rückenteil',
    does: 'Verschiebt die Seitennaht: So viel kommt zum vorderen Viertel dazu und hinten weg.',
    source: COMMON,
  },
  cornerRadius: {
    label: 'Rundung der Ecke unter dem Arm',
    does: 'Radius der Rundung zwischen Ärmelkante und Seite; null lässt eine Ecke stehen.',
    source: COMMON,
  },
  armRoom: {
    label: 'Weite über den Oberarm',
    does: 'Um mindestens so viel ist die Armöffnung größer als der Oberarm.',
    source: '51 mm und mehr in veröffentlichten Ärmelschnitten',
  },
  neckHalfWidth: {
    label: 'halbe Halsbreite',
    does: 'Von der Mitte bis zum Halspunkt.',
    source: COMMON,
  },
  sideNeckRise: {
    label: 'Anstieg zum Halspunkt',
    does: 'Wie weit der Halspunkt über der Höhe des Nackenpunkts liegt.',
    source: COMMON,
  },
  frontNeckDrop: {
    label: 'vordere Halstiefe',
    does: 'Von der Höhe des Nackenpunkts am vorderen Bruch hinunter bis zum Halsausschnitt.',
    source: COMMON,
  },
  frontRaise: {
    label: 'Anhebung des Vorderteils',
    does: 'Wie viel länger das Vorderteil über der Brust ist als das Rückenteil über dem Schulterblatt, solange nicht beides gemessen ist.',
    source: COMMON,
  },
  frontShort: {
    label: 'vorderes Armloch kürzer als hinteres',
    does: 'So viel weniger misst das Vorderteil vom Halspunkt zur Achsellinie; um so viel ist der Brustabnäher größer.',
    source:
      'aus zwei veröffentlichten Grundschnitten errechnet: 29 mm bei Brustumfang 830 mm, 43 mm bei Brustumfang 880 mm',
  },
  acrossEase: {
    label: 'Mehrweite an Rücken- und Brustbreite',
    does: 'Kommt zur Hälfte jeder Breite dazu.',
    source:
      'ein britischer metrischer Grundschnitt: halbe Rückenbreite und 5 mm; insgesamt 13 bis 25 mm, Handwerksbrauch',
  },
  shoulderDart: {
    label: 'hinterer Schulterabnäher',
    does: 'So viel länger ist die hintere Schulter als die vordere; ein Abnäher nimmt es auf.',
    source: 'aus dem Gedächtnis: 12 bis 18 mm breit und 60 bis 80 mm lang',
  },
  underarmDrop: {
    label: 'Tiefe unter der Achsel',
    does: 'Tiefer fällt es weiter, und der Arm hebt sich weniger.',
    source: `${COMMON}; angeschnittene Armlöcher liegen in alten Handbüchern 38 mm und mehr tiefer`,
  },
  overarmDrop: {
    label: 'Ende der Oberarmnaht unter dem Nacken',
    does: 'Tiefer liegt der Ärmel näher am Arm, der sich dann weniger heben lässt.',
    source: COMMON,
  },
  lengthAdded: {
    label: 'Länge zwischen Brust und Taille',
    does: 'Hinten und vorn gleich viel dazu oder weg.',
    source: COMMON,
  },
  lengthBelowWaist: {
    label: 'Länge unter der Taille',
    does: 'Von der Taillenlinie bis zum Saum.',
    source: COMMON,
  },
  sideIntake: {
    label: 'größte Taillierung an der Seite',
    does: 'Den Rest nimmt der Abnäher.',
    source: COMMON,
  },
  centreBackMost: {
    label: 'größte Taillierung in der hinteren Mitte',
    does: 'Nur wo Seite und Abnäher für die Taille nicht reichen.',
    source: COMMON,
  },
  frontDartTip: {
    label: 'vordere Abnäherspitze unter dem Brustpunkt',
    does: 'Eine vollere Brust braucht sie tiefer.',
    source: 'öffentliche Nähkurse: 13 bis 25 mm am Taillenabnäher, 13 bis 64 mm gesehen',
  },
  backDartTip: {
    label: 'hintere Abnäherspitze unter der Brustlinie',
    does: 'Bei null liegt sie auf der Brustlinie.',
    source: COMMON,
  },
  dartSecondMouth: {
    label: 'Inhalt des zweiten Brustabnähers',
    does: 'So viel vom Brustabnäher, in der Seite gemessen, kommt an seine zweite Stelle.',
    source: COMMON,
  },
  frontDartLow: {
    label: 'vorderer Abnäher unter der Taille',
    does: 'Wo der vordere Abnäher unter der Taille endet.',
    source: 'aus dem Gedächtnis: 90 bis 110 mm',
  },
  backDartLow: {
    label: 'hinterer Abnäher unter der Taille',
    does: 'Wo der hintere Abnäher unter der Taille endet.',
    source: 'aus dem Gedächtnis: 130 bis 150 mm',
  },
  sweepBack: {
    label: 'Schwung der hinteren Ärmelkante',
    does: 'Dreht die Oberarmnaht um den Halspunkt: Ihr Ende steht hinten um so viel höher, und die Ärmelkante wird etwa um so viel weiter. Weniger macht sie enger. Nicht für einen knappen Flügelärmel: Angeschnitten fällt ein weiter Ärmel in Falten.',
    source:
      'ein angeschnittener Ärmel fällt weit und hebt sich frei, wenn seine Oberarmnaht 20 bis 35° unter der Waagerechten liegt; bei 40 bis 50° hängt er glatt und hebt sich wenig (Handwerksbrauch)',
  },
  sweepFront: {
    label: 'Schwung der vorderen Ärmelkante',
    does: 'Dasselbe vorn. Hinten und vorn dürfen verschieden sein; ihre Oberarmnähte bleiben gleich lang.',
    source: 'wie hinten (Handwerksbrauch)',
  },
  keyholeLength: {
    label: 'Länge des Tropfens',
    does: 'Vom Halsausschnitt an der vorderen Mitte hinunter bis zu seinem Fuß. Nicht über eine Naht in der vorderen Mitte.',
    source: COMMON,
  },
  keyholeWidth: {
    label: 'Breite des Tropfens',
    does: 'Wo er am breitesten ist; bei null liegt er zu, breiter zeigt mehr.',
    source: COMMON,
  },
  capEase: {
    label: 'Einhalteweite',
    does: 'Wie viel länger die Armkugel ist als das Armloch; oben eingehalten, nie unter dem Arm.',
    source:
      'Hemdenstoff und Batist 10 bis 20 mm, Krepp und Wolle 25 bis 38 mm; eine eingereihte Kugel 60 mm und mehr (Ärmelschnitte, die Quellen sind sich nicht einig)',
  },
  sleevePitch: {
    label: 'Drehung des Ärmels',
    does: 'So weit ist der Ärmel im Armloch nach vorn gedreht: Seine oberste Marke und beide Passzeichen sitzen auf der Kugel um ebenso viel weiter hinten. Unter null dreht er nach hinten.',
    source:
      'ein Merkblatt zur Anprobe: Der Fadenlauf hängt mit dem Arm; ein Schneiderbuch setzt für einen nach vorn hängenden Arm den vorderen Punkt höher und den hinteren tiefer',
  },
  sleeveLength: {
    label: 'Ärmellänge',
    does: 'Vom höchsten Punkt der Armkugel bis zum Saum.',
    source: COMMON,
  },
  sleeveHem: {
    label: 'Verengung am Ärmelsaum',
    does: 'Am Saum insgesamt weggenommen; ein Wert unter null stellt ihn aus.',
    source: COMMON,
  },
  cuffHeight: {
    label: 'Höhe der Manschette',
    does: 'Vom Ärmelende bis zum Umbruch; um so viel kürzer wird der Ärmel gezeichnet.',
    source: COMMON,
  },
  cuffFullness: {
    label: 'eingereihte Weite an der Manschette',
    does: 'Um so viel ist das Ärmelende länger als die Manschette um den Arm. Null setzt sie glatt an.',
    source: COMMON,
  },
  cuffOverlap: {
    label: 'Übertritt der Manschette',
    does: 'So weit liegt ein Ende der Manschette für den Knopf unter dem anderen.',
    source: COMMON,
  },
  sleeveSlit: {
    label: 'Schlitz am Ärmelende',
    does: 'Vom Ärmelende nach oben, in der hinteren Hälfte; beide Kanten öffnen sich für die Hand.',
    source:
      '202 mm Umfang fassen 95 von 100 Händen von 1.986 Frauen (ANSUR II); Länge nach Handwerksbrauch, ohne Quelle',
  },
  skirtFlare: {
    label: 'Saumausstellung je Seite der Rockhälfte',
    does: 'Wie weit der Saum an jeder Seitennaht über die Hüfte hinaus steht.',
    source: COMMON,
  },
  biasGive: {
    label: 'Nachgeben der Taille am Tellerrock',
    does: 'Um so viel kürzer wird jede Hälfte der Taille zugeschnitten; eine schräge Kante dehnt sich bis zur Naht zurück.',
    source:
      'öffentliche Anleitungen für Tellerröcke nehmen insgesamt 6 bis 25 mm weg oder sichern die Kante und nehmen nichts',
  },
  ventLength: {
    label: 'Seitenschlitz am Saum',
    does: 'So weit bleibt die Seitennaht vom Saum an offen; null für keinen.',
    source:
      'eine Anleitung für Blusen von 1922 lässt Schlitze in den Seitennähten offen; Längen nach Handwerksbrauch',
  },
  facingWidth: {
    label: 'Breite eines Belegs',
    does: 'Von der Kante bis zur freien Kante eines geformten Belegs.',
    source: 'öffentliche Nähkurse: 50 bis 64 mm am Hals',
  },
  stripWidth: {
    label: 'Breite des Schrägstreifens',
    does: 'Wie er zugeschnitten wird, beide Einschläge mitgezählt.',
    source: 'ein altes Schulbuch: 25 bis 32 mm für einen einfachen Schrägbeleg',
  },
  buttonOverlap: {
    label: 'Übertritt der Knopfleiste',
    does: 'Von der vorderen Mitte bis zur gefalteten Kante; ein halber Knopf und etwas mehr.',
    source: COMMON,
  },
}

export const CHOICE_RANGE_WORDS: typeof English.CHOICE_RANGE_WORDS = {
  noNumber: 'keine Zahl',
  outside: (label, said, least, most) =>
    `${capital(label)} wäre ${said}; möglich ist ${least} bis ${most}.`,
}
