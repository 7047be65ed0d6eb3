import { plainNumber } from '../../units/number.ts'
import { HOW_READ, PLACE_WORDS } from '../pin.words.de.ts'
import type { JUDGE_WORDS as English } from './judge.words.ts'

export const JUDGE_WORDS: typeof English = {
  of: (id, what) => `${id}: ${what}`,
  cause: (causeId, name) => `${causeId} (${name ?? 'unbekannt'})`,
  causes: (said) => `Ursache: ${said.join(' = ')}.`,
  unread: (id, key) => `${id}: Die Antwort „${key}“ nennt keine Ursache und keine Probe davon.`,
  stretched: (id, longer, advice) =>
    `${id}: Die Kante ist ${longer} mm länger genäht als gezeichnet; mehr als 3 mm kommen vom Dehnen beim Nähen. ${advice}`,
  making: (causes, advice) => `${causes.join(', ')}: ${advice}`,
  whichSide:
    'Sag, auf welcher Seite es abgesteckt ist, links oder rechts; die Seiten werden nicht gemittelt.',
  noPart: (id, elsewhere) => `${id}: Dafür hat dieses Stück kein Teil. ${elsewhere}`,
  elsewhere: {
    cutIn:
      'Sein Ärmel ist angeschnitten: Schwenke die Oberarmnaht um den Halspunkt, versetze den Achselpunkt, oder ändere, wie weit der Ärmel ausgestellt ist.',
    setIn:
      'Sein Ärmel ist eingesetzt: Ändere die Armkugel, ihre Breite, ihre Länge oder ihre Drehung.',
    none: 'Es hat keinen Ärmel: Ändere das Armloch oder die Schulter.',
  },
  tapeSaidIt: (id, brought) =>
    `${id}: Das Maßband hat seither dasselbe gesagt: ${brought} mm auf dem halben Teil. Der Schnitt folgt der Zahl; näh ihn und sieh noch einmal hin.`,
  howMuch: (where) =>
    `Steck ab oder lies ab, wie viel es ist (${where}), und sag, wie du es abgelesen hast.`,
  under: (id, raw, smallest) =>
    `${id}: ${raw} mm auf dem halben Teil sind weniger als ${smallest} mm; genauer schneidet niemand.`,
  lineSaysIt: (id, read) =>
    `${id}: Hier braucht es keine Probe, die Linie sagt es (${read}); Linien gehen vor Falten.`,
  likeliest: (id) =>
    `${id}: das Wahrscheinlichste, nicht erwiesen; sieh beim nächsten Probeteil wieder hin.`,
  noAngle: (id, lengths) => `${id}: kein Winkel ohne ${lengths.join(', ')}.`,
  repeated: (id) =>
    `${id}: auf der anderen Seite ebenso; sag es, wenn die andere Seite richtig liegt.`,
  underarmStays: (id) =>
    `${id}: Der Achselpunkt bleibt, wo seine Höhe gemessen wurde; das Armloch ändert sich um ebenso viel, sieh beim nächsten Probeteil hin.`,
  swings: (id) => `${id}: Beim angeschnittenen Ärmel schwenkt die Oberarmnaht um den Halspunkt.`,
  leftOver: (id, left, how, value, raw) =>
    `${id}: ${left} mm sind vom letzten Probeteil übrig, jetzt sind ${value} mm abgelesen (${HOW_READ[how].word}): ${raw} mm, das Mittel auf dem halben Teil, werden geändert.`,
  fromLengths: (id, raw) => `${id}: ${raw} mm, aus den Längen gerechnet.`,
  howItCame: (id, of) =>
    `${id}: ${of.value} mm abgelesen (${HOW_READ[of.how].word}, ${PLACE_WORDS[of.where]}), das ${of.cloth === undefined ? 'Mittel beider Seiten' : `sind ${of.cloth} mm Stoff`}; ${of.raw} mm auf dem halben Teil.${of.share === undefined ? '' : ` Von dem, was abgesteckt ist, zählen ${of.share} %:`} ${of.applied} mm werden geändert, in einer Runde höchstens ${of.degrees ? `${plainNumber(of.most)}°` : `${of.most} mm`}.`,
  pastCap: 'Mehr, als eine Runde ändert: Sieh beim nächsten Probeteil wieder hin.',
  squareOff: (side) =>
    `Das Prüfquadrat misst ${side} mm und sollte 100 mm haben: Drucke in voller Größe und schneide neu zu. Der Schnitt bleibt.`,
  differentWork: (said) =>
    `${said.join(' und ')} verlangen verschiedene Änderungen. Bei welchem Abstecken verschwindet es, ohne neue Falte?`,
  test: (number, ask) => `Probe ${number}: ${ask}`,
  causeOf: (name, complaint) => `${name} (${complaint})`,
  allNo: (look) =>
    `Jede Probe war ein Nein, also zeigt sich keine ihrer Ursachen. Bügle das Probeteil, zieh es mit hängenden Armen wieder an, steck es ab und miss es noch einmal; bis dahin bleibt der Schnitt.${look.length > 0 ? ` Sieh auch nach: ${look.join('; ')}.` : ''}`,
  enough: {
    tip: 'Nach den Längen liegt die Spitze schon so weit vom Brustpunkt, wie sie soll.',
    capOver: 'Nach den Längen hat die Armkugel nicht mehr Einhalteweite, als der Stoff aufnimmt.',
    capUnder: 'Nach den Längen hat die Armkugel so viel Einhalteweite, wie der Stoff aufnimmt.',
    dart: 'Der Abnäher hat weniger als 22° und 44 mm: Dass er beult, liegt am Nähen oder Bügeln, nicht am Schnitt. Näh ihn fein auslaufend und bügle ihn über eine Rundung.',
  },
  nothingThere: (id, most, smallest) =>
    `${id}: ${most} mm sind weniger als ${smallest} mm: Da fehlt nichts und ist nichts zu viel, was sich schneiden ließe.`,
  lessThanNothing: (how, value) =>
    `${value} mm (${HOW_READ[how].word}) sind weniger als nichts. Lies es noch einmal ab; geht es andersherum, ist es eine andere Beobachtung.`,
  absurd: (raw, most) =>
    `${raw} mm auf dem halben Teil ist mehr, als eine Anprobe je ändert; in einer Runde sind es höchstens ${most} mm. Lies es noch einmal ab, mit der Einheit, und miss die Zahlen nach, auf denen es beruht.`,
  takesAway: (how) =>
    `So abgesteckt (${HOW_READ[how].word}) nimmt es Stoff weg, und hier fehlt welcher. Öffne die Naht oder schneide ein, wo es spannt, und lies die Lücke ab.`,
  letsIn:
    'Ein Einschnitt gibt Stoff dazu, und hier ist zu viel. Steck es weg und lies die Falte ab.',
  lineDenies: (read) =>
    `Abgelesen: ${read}. Linien gehen vor Falten, und diese spricht dagegen: Sieh dir die Linie noch einmal an und leg sie richtig, bevor etwas geändert wird.`,
  lineFirst: (read, name) =>
    `Linien gehen vor Falten, und eine sagt mehr (${read}): Nimm auch „${name}“ auf.`,
}
