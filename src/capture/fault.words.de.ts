import type { FAULT_WORDS as English, WITHOUT_CARD as EnglishWithoutCard } from './fault.words.ts'

export const WITHOUT_CARD: typeof EnglishWithoutCard =
  'Ohne sie hat das Bild keinen Maßstab. Häng den gedruckten Bogen flach an den Körper, das ganze schwarze Quadrat im Bild, oder tipp die vier Ecken einer Karte im Bankkartenformat an.'
const NO_PERSON =
  'Auf diesem Foto war keine stehende Person zu finden. Stell dich so, dass Kopf und Füße im Bild sind, das Licht von vorn, und nimm es noch einmal auf.'
const TURNED =
  'Dieses Foto liegt auf der Seite. Dreh es im Fotoprogramm aufrecht, oder halte die Kamera aufrecht, und wähl es noch einmal.'

export const FAULT_WORDS: typeof English = {
  noCard: `Keine Karte auf diesem Foto. ${WITHOUT_CARD}`,
  mirrored:
    'Dieses Foto ist gespiegelt, links und rechts sind also vertauscht. Schalte das Spiegeln in der Kamera aus, oder nimm die hintere Kamera, und nimm es noch einmal auf.',
  twoCards:
    'Auf diesem Foto ist mehr als ein gedruckter Bogen. Lass nur den hängen, der am Körper hängt, und nimm es noch einmal auf.',
  outOfOrder:
    'Die vier Punkte kreuzen sich. Tipp die Ecken reihum an, im Uhrzeigersinn, von oben links an.',
  cardTooSmall:
    'Die Karte ist auf diesem Foto zu klein für einen Maßstab. Komm näher, nimm ein Foto mit mehr Pixeln oder den gedruckten Bogen.',
  edgeUnseen:
    'Eine Kante der Karte hebt sich nicht ab. Halte sie am Rand, in gleichmäßigem Licht, vor Stoff in einem anderen Ton, und halte die Kamera still.',
  cornerTooFar:
    'Bei einem der Punkte hat die Karte keine Ecke. Vergrößere das Foto und tipp die vier Ecken noch einmal an, im Uhrzeigersinn von oben links.',
  wrongShape:
    'Diese Ecken haben nicht die Form der Karte von vorn. Prüf die vier Ecken, oder dreh die Karte flach zur Kamera und nimm das Foto noch einmal auf.',
  pictureTooSmall:
    'Dieses Bild hat zu wenig Pixel zum Messen. Nimm das Foto, wie die Kamera es gemacht hat, keine kleine Kopie.',
  fourTaps: 'Tipp die vier Ecken der Karte an, im Uhrzeigersinn von oben links.',
  noGoodRectangle:
    'Ein Rechteck dieser Größe gibt keinen guten Maßstab. Nimm eines mit Seiten von 5 bis 40 cm (2 bis 16 in), die lange höchstens dreimal so lang wie die kurze, und miss beide Seiten noch einmal.',
  turned: TURNED,
  feetCut:
    'Deine Füße sind nicht im Bild. Tritt zurück, oder neige die Kamera nach unten, bis Kopf und Füße zu sehen sind, und nimm das Foto noch einmal auf.',
  headCut:
    'Dein Kopf ist nicht im Bild. Tritt zurück, oder neige die Kamera nach oben, bis Kopf und Füße zu sehen sind, und nimm das Foto noch einmal auf.',
  twoPersons:
    'Auf diesem Foto ist mehr als eine Person. Stell dich allein ins Bild, ohne Spiegel oder Plakat hinter dir, und nimm es noch einmal auf.',
  blurred:
    'Dieses Foto ist unscharf, Kanten lassen sich nicht messen. Leg die Kamera auf, nimm den Selbstauslöser, steh still und nimm es noch einmal auf.',
  againstLight:
    'Das Licht kommt von hinten, das Foto zeigt nur deinen Umriss. Stell dich so, dass Fenster oder Lampe vor dir sind, und nimm es noch einmal auf.',
  handsOnHips:
    'Deine Hände liegen am Körper, so sind seine Seiten verdeckt. Lass die Arme etwas abseits der Hüften hängen und nimm das Foto noch einmal auf.',
  noPerson: NO_PERSON,
  noPersonTurned: `${NO_PERSON} ${TURNED}`,
  notWhole:
    'Der Körper ist nicht ganz im Bild oder steht nicht aufrecht. Tritt zurück, bis Kopf und Füße zu sehen sind, und nimm es noch einmal auf.',
  noBandSide:
    'Auf dem Foto von der Seite ist in der Taille kein Gummiband zu sehen. Binde eines um und nimm das Foto noch einmal auf, oder zieh die Taillenpunkte dorthin.',
  noIndent:
    'Der Umriss ist zwischen Brust und Hüfte nirgends schmaler, die Taille ist also nicht zu sehen. Binde ein Gummiband um die Taille und nimm das Foto noch einmal auf, oder zieh den Taillenpunkt dorthin.',
  noTrunk:
    'Auf diesem Foto war keine Person zu finden, darum ist nicht klar, wo der Stoff ist. Nimm es vom Hals bis zu den Oberschenkeln auf, das Licht von einer Seite.',
  noCloth:
    'Der Stoff war vom Rest nicht zu unterscheiden. Nimm ein einfarbiges Probeteil und Licht von einer Seite, das zeigt die Falten am besten.',
}
