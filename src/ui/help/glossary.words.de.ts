import type { GLOSSARY_WORDS as English } from './glossary.words.ts'

/** Not the English words anew: the words of the trade that the German page uses. */
export const GLOSSARY_WORDS: typeof English = {
  agreed: {
    word: 'bestätigt',
    says: 'Zwei Ablesungen des Maßbands liegen nah genug beieinander. Nur aus bestätigten Zahlen wird gezeichnet.',
  },
  allowance: {
    word: 'Nahtzugabe',
    says: 'Stoff außerhalb der Nahtlinie. Erst wird die Naht gezeichnet, dann die Zugabe angefügt.',
  },
  balance: {
    word: 'Balance',
    says: 'Um wie viel das Vorderteil länger ist als das Rückenteil, über Brustpunkt und Schulterblatt gemessen.',
  },
  bias: {
    word: 'schräger Fadenlauf',
    says: 'Schräg zu den Fäden, im Winkel von 45°. In dieser Richtung dehnt sich Stoff am meisten; Schrägstreifen werden so geschnitten.',
  },
  block: {
    word: 'Grundschnitt',
    says: 'Ein schlichter Schnitt, der nah am Körper sitzt. Aus ihm entstehen die Stücke.',
  },
  bustTip: {
    word: 'Brustpunkt',
    says: 'Der Punkt, auf den ein Brustabnäher zielt. Die Abnäherspitze endet kurz davor.',
  },
  calico: {
    word: 'Nessel',
    says: 'Ungebleichte Baumwolle in Leinwandbindung, so fest wie der spätere Stoff. Aus ihr näht man Probeteile.',
  },
  cap: {
    word: 'Armkugel',
    says: 'Der runde obere Teil des Ärmels. Ist er länger als das Armloch, wird der Unterschied eingehalten: Das ist die Einhalteweite.',
  },
  complaint: {
    word: 'Beobachtung',
    says: 'Was ein Probeteil tut und nicht soll: eine Falte, ein Zug, ein Abstehen. Es liegt am Schnitt, nie am Körper.',
  },
  dart: {
    word: 'Abnäher',
    says: 'Ein Keil Stoff, der spitz weggenäht wird, damit flacher Stoff über eine Rundung geht. Seine Seiten heißen Schenkel, seine Weite Abnäherinhalt.',
  },
  ease: {
    word: 'Mehrweite',
    says: 'Was ein Stück mehr misst als der Körper, zum Bewegen und Atmen. Auch Bequemlichkeitszugabe genannt.',
  },
  fold: {
    word: 'Stoffbruch',
    says: 'Die Kante, an der Stoff doppelt liegt. Ein Schnittteil im Stoffbruch wird beim Aufklappen ganz.',
  },
  grain: {
    word: 'Fadenlauf',
    says: 'Die Richtung der langen Fäden, gleichlaufend mit der Webkante. Der Pfeil auf einem Schnittteil zeigt ihn.',
  },
  muslin: {
    word: 'Probeteil',
    says: 'Das Stück auf Probe in einfachem Stoff, mit langen Stichen geheftet, damit es sich wieder auftrennen lässt.',
  },
  nape: {
    word: 'Nackenpunkt',
    says: 'Der Wirbel hinten am Halsansatz, der hervortritt, wenn der Kopf sich beugt. Hier beginnt die Rückenlänge.',
  },
  notch: {
    word: 'Passzeichen',
    says: 'Eine kleine Marke an der Kante, auch Knips genannt. Eine ist vorn, zwei sind hinten; gleiche treffen aufeinander.',
  },
  overarm: {
    word: 'Oberarmnaht',
    says: 'Die Linie vom Halspunkt über die Schulter den Arm hinunter.',
  },
  plumb: { word: 'Lot', says: 'Die Linie gerade nach unten, wie ein Gewicht am Faden hängt.' },
  proof: {
    word: 'Prüfung',
    says: 'Was die Seite an einem Schnitt nachsieht: ob die Nähte passen und ob man hineinkommt.',
  },
  reading: { word: 'Ablesung', says: 'Eine Zahl vom Maßband. Jede Länge wird zweimal abgelesen.' },
  round: {
    word: 'Runde',
    says: 'Ein Probeteil mit allem: Zahlen, Schnitt, was zu sehen war, was entschieden wurde.',
  },
  scye: { word: 'Armausschnitt', says: 'Ein anderes Wort für das Armloch.' },
  sideNeck: {
    word: 'Halspunkt',
    says: 'Wo der Hals in die Schulter übergeht, unter dem Ohrläppchen.',
  },
  toile: { word: 'Nesselmodell', says: 'Dasselbe wie ein Probeteil.' },
  truing: {
    word: 'Angleichen',
    says: 'Eine Linie nach einer Änderung wieder glatt und im Winkel zeichnen und Nähte, die sich treffen, aneinanderhalten.',
  },
  walking: {
    word: 'Abgehen',
    says: 'Eine Naht Stück für Stück an die andere legen, um zu sehen, ob beide gleich lang sind.',
  },
  watch: {
    word: 'nächstes Mal ansehen',
    says: 'Was von einem abgesteckten Maß übrig ist. Erst wird das nächste Probeteil angesehen, dann geändert.',
  },
}
