/** What she reads of the complaints in draped.ts, in German. */
import type { DRAPED_WORDS as English } from './draped.words.ts'

export const DRAPED_WORDS: typeof English = {
  D1: {
    said: ['der Flügelärmel steht ab', 'steht von der Schulter hoch'],
    where: 'äußere Schulter, Ärmelkante',
    sign: 'Die Kante steht waagerecht ab, oben zwischen Arm und Ärmel ist ein Hohlraum.',
    causes: {
      1: 'Oberarmnaht zu flach gezeichnet',
      2: 'Stoff zu steif',
      3: 'Ärmelkante schwingt zu wenig aus',
    },
    advice: { 2: 'Versuch es mit weicherem Stoff oder forme weniger; der Schnitt bleibt.' },
    tests: {
      1: 'Steck an der Oberarmnaht entlang eine Falte ab, an der Kante breit. Legt sich der Ärmel an?',
      2: 'Steht der Ärmel auch in weichem Stoff ab?',
    },
    trueAfter: ['Oberarmnaht glatt vom Halspunkt aus', 'Ärmelkante', 'Achsel'],
    doNot: 'Nicht zu steil, sonst lässt sich der Arm nicht heben.',
  },
  D2: {
    said: ['der angeschnittene Ärmel zieht, wenn der Arm hängt'],
    where: 'über dem Schulterknochen',
    sign: 'Straffe Zugfalten vom Knochen zur Kante, vorn und hinten.',
    causes: {
      1: 'Oberarmnaht zu steil oder zu kurz',
      2: 'gerade Schultern',
      3: 'Schulterlinie zu kurz',
    },
    tests: {
      1: 'Schneide am Knochen längs der Oberarmnaht ein. Öffnet es sich?',
      2: 'Lässt es schon nach, wenn du nur am Knochen öffnest?',
    },
    trueAfter: ['Oberarmnaht'],
    doNot: 'Mach dafür den Hals nicht weiter.',
  },
  D3: {
    said: ['Seite und Saum gehen mit dem Arm hoch', 'zieht die ganze Seite mit hoch'],
    where: 'Achsel',
    sign: 'Hebst du den Arm, zieht er Stoff vom Saum die Seite hinauf.',
    causes: {
      1: 'Oberarmnaht zu steil',
      2: 'Achselpunkt zu tief',
      3: 'zu eng',
    },
    tests: {
      1: 'Heb den Arm waagerecht. Wird er frei, wenn du die Oberarmnaht öffnest?',
      2: 'Wird der gehobene Arm frei, wenn du den Achselpunkt höher steckst?',
      3: 'Wird der gehobene Arm frei, wenn du die Ärmelkante einschneidest?',
    },
    trueAfter: ['Achselrundung', 'Seitennähte gleich lang'],
    doNot:
      'Setz den Achselpunkt nicht tiefer, um den Arm freier zu bekommen, außer der Ärmel ist weit.',
  },
  D4: {
    said: ['dicke Falten unter dem Arm'],
    where: 'Achsel',
    sign: 'Weiche Längsfalten vom Arm zur Taille.',
    causes: {
      1: 'so fällt ein angeschnittener Ärmel',
      2: 'Achselpunkt zu tief',
      3: 'Ärmelkante schwingt zu weit aus',
    },
    advice: {
      1: 'Ein angeschnittener Ärmel legt sich in Falten, wenn der Arm hängt. Lass sie, außer es ist zu viel.',
    },
    tests: {
      1: 'Steck die Falte an der Achsel ab. Lässt sich der Arm noch heben?',
      2: 'Legt es sich, wenn du die Kante enger machst?',
    },
    trueAfter: ['Seitenrundung', 'Seitennähte gleich lang'],
    doNot: 'Jage nicht jeder Falte nach.',
  },
  D5: {
    said: ['der Ärmel fällt nach vorn', 'Falten vorn und hinten ungleich'],
    where: 'Ärmelkante',
    sign: 'Auf der einen Seite mehr Falten als auf der anderen.',
    causes: {
      1: 'Oberarmnaht liegt nicht oben auf dem Arm',
      2: 'vorn und hinten in anderem Fadenlauf zugeschnitten',
      3: 'Ärmelkante schwingt vorn und hinten verschieden aus',
    },
    advice: {
      2: 'Schneide Vorderteil und Rückenteil im gleichen Fadenlauf zu; der Schnitt bleibt.',
    },
    tests: {
      1: 'Zeichne die Oberseite des Arms an. Liegt die Naht davor oder dahinter?',
      2: 'Sind die beiden Kanten verschieden lang?',
    },
    trueAfter: ['Oberarmnaht', 'Ärmelkante'],
    doNot: 'Schneide nicht nur die längere Seite zurück.',
  },
  D6: {
    said: ['man sieht den BH, wenn ich den Arm heb'],
    where: 'Öffnung unter dem Arm',
    sign: 'Eine weite Öffnung unter dem Arm.',
    causes: { 1: 'Achselpunkt zu tief', 2: 'Öffnung zu groß' },
    tests: {
      1: 'Miss mit dem Maßband die Tiefe, die du willst. Liegt der Achselpunkt tiefer?',
      2: 'Stimmt die Tiefe, und ist die Kante zu lang?',
    },
    trueAfter: ['Achsel'],
    doNot: 'Mach sie nicht kleiner, als der Arm sie braucht.',
  },
  D7: {
    said: ['die Ärmelkante ist zu eng'],
    where: 'Ärmelkante',
    sign: 'Die Kante liegt eng um den Arm.',
    causes: { 1: 'Ärmelkante zu kurz' },
    tests: { 1: 'Schneide die Kante ein. Öffnet sie sich?' },
    trueAfter: ['Ärmelkante', 'ihr Beleg'],
    doNot: 'Dehne nicht nur den Saum.',
  },
  D8: {
    said: ['welliger Saum im Schrägen', 'die Kante dehnt sich ungleich'],
    where: 'Ärmelkante',
    sign: 'Die Kante ist wellig und dort länger, wo sie im schrägen Fadenlauf liegt.',
    causes: {
      1: 'der Stoff senkt sich im schrägen Fadenlauf',
      2: 'beim Säumen gedehnt',
    },
    advice: {
      1: 'Lass es einen Tag hängen, zeichne die Kante mit einem einzigen Radius neu an und säume sie schmal. Das wird beim Stoff vermerkt, nicht im Schnitt.',
      2: 'Sichere die Kante mit einer Stütznaht, bevor du säumst; der Schnitt bleibt.',
    },
    tests: {
      1: 'Weicht der Radius vom Schnitt ab, wenn es einen Tag gehangen hat?',
      2: 'Stimmt der Radius, und ist die Kante wellig?',
    },
    trueAfter: [],
    doNot: 'Ändere nicht den Schnitt, weil sich der Stoff im Schrägen senkt.',
  },
}
