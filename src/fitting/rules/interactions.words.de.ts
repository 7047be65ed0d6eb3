import type { Kind } from '../complaints/heads.ts'
import type { INTERACTION_WORDS as English } from './interactions.words.ts'

const KINDS: Readonly<Record<Kind, string>> = {
  length: 'Länge oder Balance',
  shape: 'Schulter oder Brust',
  girth: 'Umfang oder Ärmel',
}

export const INTERACTION_WORDS: typeof English = {
  first: {
    tightBust:
      'Eine enge Brust wird zuerst weiter gemacht; was dann noch absteht, wird neu abgesteckt',
    hip: 'Zuerst die Hüfte: Eine enge Hüfte schiebt dieselbe Falte hoch',
    overBlades:
      'Zuerst die Länge über den Schulterblättern; Hals, Lage der Naht und Ärmel folgen ihr',
    shoulderSeam: 'Zuerst die Schulternaht, an ihr hängt der Ärmel',
    slope: 'Die Schulterschräge nimmt den Achselpunkt mit',
    capWidth: 'Zuerst Breite und Höhe der Armkugel, dann ihre Länge',
    balance: 'Zuerst die Balance, zuletzt die Lage der Seitennaht',
    frontWidth: 'Zuerst die Breite vorn, dann die Lage des Brustpunkts',
  },
  sameSlack: {
    levelTuck:
      'Die waagerechte Falte oberhalb der Brust nimmt auch die lose Weite am Halsausschnitt',
    aboveBust: 'Die lose Weite oberhalb der Brust wird nur einmal weggenommen',
    slope: 'Hinter der losen Weite am Armloch steckt die Schulterschräge',
    oneShoulder: 'Eine Schulter ist tiefer: Die Seiten werden getrennt geändert',
    longShoulder: 'Hinter der losen Weite neben dem Armloch steckt die lange Schulter',
    wedgeAtArmhole: 'Der Keil am Armloch nimmt dieselbe lose Weite',
    pleat: 'Die Falte quer über den Rücken nimmt auch die Falte am Hals',
    foldsAtNeck: 'Hinter den Falten am Hals steckt die Schulterschräge',
    waist: 'Die Taille wird nur einmal enger, rundum',
    allLoose: 'Alles ist weit: Das Ganze wird nur einmal enger',
    allTight: 'Alles ist eng: Das Ganze wird nur einmal weiter',
    width: 'Es fehlt dieselbe Weite: Sie kommt nur einmal dazu',
    frontLength: 'Vorn fehlt dieselbe Länge: Sie kommt nur einmal dazu',
    bladeLength: 'Über den Schulterblättern fehlt dieselbe Länge: Sie kommt nur einmal dazu',
    tooMuchInFront: 'Vorn ist dieselbe Länge zu viel: Sie wird nur einmal weggenommen',
    underarm: 'Der Achselpunkt kommt nur einmal höher',
    frontWidth: 'Die Breite vorn wird nur einmal schmaler',
    lowerCap: 'Eine niedrigere Armkugel ist auch kürzer',
  },
  evenPart: 'Zuerst der gleichmäßige Teil, dann ein Keil für den Rest',
  opposed: {
    reach:
      'Der Rücken soll weiter werden, um nach vorn zu greifen, und enger wegen loser Weite; 6 bis 13 mm auf jeder Hälfte bleiben zum Greifen',
    waistWidth: 'Die Taille ist zu eng und zu weit',
    bust: 'Die Brust ist zu eng und zu weit',
    slope: 'Die Schulter ist zu flach und zu steil gezeichnet',
    shoulderLength: 'Die Schulter ist zu lang und zu kurz',
    shoulderSeam: 'Die Naht liegt zu weit hinten und zu weit vorn',
    neck: 'Der Hals ist zu eng und zu weit',
    waistHeight: 'Die Taille liegt zu hoch und zu tief',
    underarm: 'Der Achselpunkt liegt zu hoch und zu tief',
    underarmLift:
      'Der Achselpunkt sollte tiefer, um bequem zu sein, und höher, um den Arm zu heben',
    capHeight: 'Die Armkugel ist zu niedrig und zu hoch',
    capEase: 'Die Armkugel hat zu viel Einhalteweite und zu wenig',
    overarm: 'Die Oberarmnaht ist zu flach und zu steil',
    overarmLift: 'Eine steilere Oberarmnaht liegt enger an und hebt sich weniger',
    sweep: 'Der Ärmel ist zu weit und zu wenig ausgestellt',
    all: 'Alles ist zu eng und zu weit',
    chest: 'Die Brustbreite ist zu groß und zu klein',
    sideSeam: 'Die Seitennaht schwingt nach vorn und nach hinten',
    backLength: 'Der Rücken ist über der Taille zu kurz und zu lang',
    underBust: 'Das Vorderteil ist unter der Brust zu kurz und zu lang',
    aboveBust: 'Das Vorderteil ist oberhalb der Brust zu lang und zu kurz',
  },
  oneCause:
    'Hals und Armloch stehen aus einem Grund ab: Die Abnäher nehmen zu wenig auf. An jeder Kante wird einmal geschwenkt, beides in die Abnäher; das Vorderteil wird nicht auch noch breiter.',

  comesFrom: (id, to) =>
    `„${id}“ kommt von „${to}“, das beides erklärt: Es wird nur einmal geändert.`,
  chooseOne: ([a, b], why, [first, second]) =>
    `„${a}“ und „${b}“: ${why}. „${a}“ würde ${first} mm ändern, „${b}“ ${second} mm: Wähl eines.`,
  takesItsPart: (id, why, even, left) =>
    `${id}: ${why}. „${even}“ nimmt seinen Teil; ${left} mm bleiben.`,
  atTheNeck: ([bust, neck], [above, there]) =>
    `„${neck}“ und „${bust}“ beschreiben dieselbe lose Weite; der Keil am Hals ließ sie verschwinden, darum wird sie dort genommen (${there} mm) und nicht oberhalb der Brust (${above} mm).`,
  notTwice: ([keep, drop], why, [there, here]) =>
    `„${keep}“ und „${drop}“ beschreiben dieselbe lose Weite: ${why}. Sie wird nicht zweimal genommen (${there} mm dort, ${here} mm hier).`,
  waitsFor: (id, first, why) => `„${id}“ wartet auf „${first}“: ${why}.`,
  oneOfAKind: (id, kind, first) =>
    `„${id}“ wartet: je Runde eine Änderung dieser Art (${KINDS[kind]}), und „${first}“ kommt zuerst.`,
  inTurn: (id, first) => `Nach „${id}“ wird gefragt, wenn „${first}“ geklärt ist.`,
  onlyLikely: (id, other) => `„${id}“ ist nur wahrscheinlich: „${other}“ kommt zuerst.`,
}
