import type * as English from './finding.words.ts'

export const FINDING_WORDS: typeof English.FINDING_WORDS = {
  centresApart:
    'Linke und rechte Hälfte weichen an der Mitte um {value} voneinander ab; erlaubt sind höchstens {limit}. Ändere die Mitte auf beiden Seiten gleich.',
  overarmPair:
    'Die Oberarmnähte von Rücken- und Vorderteil sind um {value} verschieden lang; zusammengenäht dürfen es höchstens {limit} sein.',
  sidePair:
    'Die Seitennähte von Rücken- und Vorderteil sind um {value} verschieden lang; zusammengenäht dürfen es höchstens {limit} sein.',
  shoulderPair:
    'Die Schulternähte von Rücken- und Vorderteil sind um {value} verschieden lang; zusammengenäht dürfen es höchstens {limit} sein.',
  armholeJoin: 'Hinteres und vorderes Armloch laufen hier nicht in einer Linie weiter.',
  armholeSmall:
    'Das Armloch misst {value} rundum; Oberarm und Bewegungsweite brauchen {limit}. Leg den Achselpunkt tiefer.',
  capPair:
    'Die Armkugel ist {value} länger als das Armloch; gewählt sind {limit}. Zeichne den Ärmel neu.',
  capUnsolved:
    'Keine Armkugel von {limit} Weite ist so lang wie diese Armlöcher von {value}. Ändere die Weite über den Oberarm oder den Achselpunkt.',
  capGathered:
    'In der Armkugel sind {value} einzuhalten, gewählt sind {limit}: Reihe sie oben leicht ein, damit sie über den Arm geht.',
  sleeveWider:
    'Der Ärmel ist {value} weiter als die {limit} für Arm und Bewegungsweite, damit seine Armkugel nicht zu hoch steht.',
  sleeveLonger: 'Der Ärmel ist {value} lang: Er endet mindestens {limit} unter der Achsel.',
  sleeveHemWider:
    'Der Ärmelsaum misst {value} rundum und nicht weniger, damit eine Hand hindurchgeht.',
  sleeveEndWider:
    'Das Ärmelende misst {value} rundum und nicht weniger: Ein Handgelenk braucht {limit}, und durch den offenen Schlitz geht eine Hand.',
  cuffWider:
    'Die Manschette schließt mit {value} rundum und nicht enger, für Handgelenk und Hand; eingereiht werden sollten {limit}.',
  cuffRound:
    'Die Manschette schließt mit {value} rundum, so viel lässt ihr das Ärmelende: Der Arm ist dort nicht gemessen. Schließ ein Maßband auf diese Länge und schieb es dahin, wo die Manschette liegen wird.',
  cuffPair:
    'Ärmelende und Manschette weichen um {value} voneinander ab; zusammengenäht dürfen es höchstens {limit} sein.',
  slitShorter: 'Der Schlitz ist {value} lang und nicht {limit}: Er endet unter der Achsel.',
  handPasses:
    'Das Ärmelende öffnet sich auf {value} rundum; eine Hand braucht {limit}. Mach den Schlitz oder den Ärmel länger.',
  waistPair:
    'Oberteil und Rock weichen an der Taillennaht um {value} voneinander ab; zusammengenäht dürfen es höchstens {limit} sein.',
  waistDarts: 'Ein Abnäher des Rocks verfehlt den des Oberteils an der Taillennaht um {value}.',
  hemNarrow:
    'Der Saum misst {value} rundum; zum Gehen braucht er {limit} oder Schlitze in den Seitennähten.',
  sleevePair:
    'Die beiden Ärmelnähte sind um {value} verschieden lang; zusammengenäht dürfen es höchstens {limit} sein.',
  acrossWide:
    'Die halbe Breite misst {value} und reicht über den Achselpunkt bei {limit} hinaus. Miss Rücken- und Brustbreite noch einmal.',
  acrossBackUnknown:
    'Die Rückenbreite ist nicht gemessen: Sie folgt der Größe, {value} für die Hälfte.',
  acrossChestUnknown:
    'Die Brustbreite ist nicht gemessen: Sie folgt der Größe, {value} für die Hälfte.',
  dartLegs:
    'Die Schenkel eines Abnähers sind um {value} verschieden lang; zusammengenäht dürfen es höchstens {limit} sein.',
  neckJoin:
    'Hinterer und vorderer Halsausschnitt laufen an der Oberarmnaht nicht in einer Linie weiter.',
  notSquare: 'Diese Ecke ist am Stoffbruch nicht rechtwinklig.',
  sideJoin: 'Die Seitennaht ist hier nicht glatt.',
  outlineCrosses:
    'Der Umriss dieses Teils kreuzt sich selbst. Ändere die Zahl, die du zuletzt geändert hast.',
  armOpening:
    'Die Armöffnung misst {value} rundum; dein Oberarm und die Bewegungsweite brauchen {limit}. Leg den Achselpunkt tiefer oder verlängere die Oberarmnaht.',
  upperArmUnknown:
    'Der Oberarm ist nicht gemessen, darum lässt sich die Armöffnung von {value} nicht prüfen.',
  underarmPlace:
    'Der Achselpunkt liegt {value} unter der Achselhöhe; näher als {limit} schneidet der Ärmel in den Arm. Leg den Achselpunkt tiefer.',
  armpitUnknown:
    'Die Achselhöhe ist nicht gemessen: Der Achselpunkt liegt {value} über der Brustlinie. Näh damit ein Probeteil, nicht den Stoff.',
  overarmShort:
    'Die gemessene Oberarmlänge von {value} ist für beide Ärmelkanten zu kurz; {limit} ist das Kürzeste. Es gilt die Länge, die vom Achselpunkt her gefunden ist.',
  overarmRaised:
    'Die Oberarmnaht endet {value} höher als gewählt: Sie würde sonst neben oder unter dem Achselpunkt enden.',
  struckOutside:
    'Ein Bogen mit der gemessenen Oberarmlänge von {value} trifft die Seite zu weit von der Achsel. Es gilt die Länge, die vom Achselpunkt her gefunden ist.',
  dartWide: 'Ein Abnäher ist {value} breit; mehr als {limit} fasst er nicht gut.',
  secondDart:
    'Ein einziger Abnäher wäre {value} breit und fasst nur {limit}, darum geht der Rest in die Seite und einen zweiten Abnäher.',
  waistLooser:
    'Abnäher fassen hier {limit}; die Taille hängt auf jeder Hälfte um {value} lockerer als gewählt.',
  underarmDeeper:
    'Der Achselpunkt liegt {value} tiefer als gewählt, damit {limit} um den Arm herum bleiben.',
  centreBackSeam:
    'Seite und Abnäher reichen für die Taille nicht: Eine Naht in der hinteren Mitte nimmt {value}.',
  dartOpen:
    'Der Saum ist zu nah, dieser Abnäher schließt sich nicht mehr: Er läuft offen aus, am Saum {value} breit.',
  dartStays:
    'Der Brustabnäher von {value} bleibt in der Seite: Wo er hin sollte, hat das Teil keinen Platz für ihn.',
  bustDartHigher:
    'Die Brustlinie liegt für einen Abnäher in der Seite zu nah in der Taille: Seine Öffnung ist {value} höher gezeichnet. Miss noch einmal von der Taille zur Brustlinie oder gib zwischen beiden Länge zu.',
  seamNotHere:
    'Der Brustabnäher von {value} bleibt ein Abnäher: Eine Teilungsnaht beginnt an Schulter oder Armloch.',
  bustDart:
    'Das Vorderteil ist am Körper länger als das Rückenteil: Ein Abnäher von {value} in der Seite nimmt auf, was die Anhebung von {limit} nicht aufnimmt.',
  headUnknown:
    'Der Kopf ist nicht gemessen, darum ist nicht bekannt, ob die Halsöffnung von {value} über ihn geht.',
  headOpening:
    'Die Halsöffnung misst {value} rundum; der Kopf braucht {limit}. Mach den Ausschnitt weiter oder tiefer oder wähl dort eine Öffnung.',
  gettingInUnknown:
    'Es ist nicht bekannt, ob die Taille von {value} über Brust und Schultern geht: Miss den Schlupfumfang.',
  gettingIn:
    'Die genähte Taille misst {value} rundum; {limit} müssen hindurch. Wähl eine Öffnung, die bis zur Taille reicht.',
  openingAdded:
    'Ohne Öffnung müssten {value} durch {limit} hindurch. Der Schnitt bekommt eine Öffnung dazu; wähl eine andere, wenn du magst.',
  frontNeckHigh:
    'Der vordere Halsausschnitt liegt {value} unter der Höhe des Nackenpunkts, über deiner Halsgrube bei {limit}. Mach den Ausschnitt tiefer.',
  neckBaseUnknown:
    'Der Halsumfang ist nicht gemessen: Der Halspunkt folgt nicht der Schulterschräge.',
  fullerBust:
    'Der Brustumfang ist {value} größer als der Oberbrustumfang. Ab {limit} liegen ein breiteres Vorderteil und eine tiefere Abnäherspitze vielleicht besser.',
  balanceUnknown:
    'Vorder- und Rückenlänge über Brust und Schulterblatt sind nicht gemessen; das Vorderteil ist um {value} angehoben, den üblichen Betrag.',
  straightWaist: 'Die Taille läuft hier gerade: Es gibt keinen Abnäher.',
  waistWider:
    'Die Taille ist hier weiter als die Brust: Die Seite läuft zu ihr hinaus, und es gibt keinen Abnäher.',
}

export const findingOnSide: typeof English.findingOnSide = (side, said) =>
  `${side === 'left' ? 'Links' : 'Rechts'}: ${said}`
