import type { FINISHING_WORDS as English } from './finishing.words.ts'

export const FINISHING_WORDS: typeof English = {
  zip: 'Reißverschluss',
  zipLeftOnly: 'Reißverschluss, nur links',
  slitWithLoop: 'Schlitz mit Schlinge',
  keyholeWithLoop: 'Tropfenausschnitt mit Schlinge',
  centreFrontButtons: 'vordere Mitte, Knöpfe darauf',
  ventLeftOpen: 'Schlitz, bleibt offen',
  mitre: 'Gehrung',
  gatherTo: (sewn) => `auf ${sewn} mm einreihen`,
  opened: {
    sideZip: {
      words: 'den Reißverschluss in der linken Seitennaht',
      why: 'nur in der linken Hälfte, von unterhalb der Achsel an',
    },
    backZip: {
      words: 'den Reißverschluss in der hinteren Mittelnaht',
      why: 'vom Halsausschnitt nach unten; das Rückenteil wird in zwei Hälften zugeschnitten',
    },
    buttonedFront: {
      words: 'den Übertritt an der vorderen Mitte',
      why: 'Die Knöpfe sitzen auf der Mittellinie, die Kante wird belegt',
    },
    neckSlit: {
      words: 'den Schlitz in der hinteren Mitte',
      why: 'belegt, oben mit Knopf und Schlinge',
    },
  },
  keyholeFaced: 'erst belegt, dann aufgeschnitten, oben mit Knopf und Schlinge',
  takesTheNeck: 'Der Beleg folgt dem Halsausschnitt, wie er jetzt liegt',
  takesTheFrontEdge: 'Der Beleg folgt der vorderen Kante, wie sie jetzt liegt',
  takesTheWaist: 'mit gefalteten Abnähern, denn der Beleg folgt der Taille, wie sie genäht wird',
  neatenedFirst: 'vor dem Annähen versäubert',
  asWideAsBendAllows: 'so breit, wie es die Rundung zulässt',
  asWideAsNeckAllows: 'so breit, wie es der Halsausschnitt zulässt',
  wholeArmhole: 'ganzes Armloch',
  stripForEachArmhole: 'im Winkel von 45° zur Webkante zugeschnitten, einer für jedes Armloch',
  theKeyhole: 'Länge des Tropfens',
  keyholeOnItsMiddle:
    'Der Tropfen wird auf seine Mitte gezeichnet, auf der Linie umnäht und erst dann ausgeschnitten',
  theSlit: 'Länge des Schlitzes',
  slitDownItsMiddle:
    'Der Schlitz wird auf seine Mitte gezeichnet, umnäht und erst dann aufgeschnitten',
  wholeNeckEdge: 'ganzer Halsausschnitt',
  stripOnTheBias:
    'im Winkel von 45° zur Webkante zugeschnitten; ist einer zu kurz, werden Streifen im geraden Fadenlauf angesetzt',
  whatTwoMitresTake: 'was die beiden Gehrungen brauchen',
  whatMitreTakes: 'was die Gehrung braucht',
  flatAtPointOfV: 'An der Spitze des V liegt der Streifen dann flach',
  flatAtCorners: 'An den Ecken des Ausschnitts liegt der Streifen dann flach',
  asLongAsSideAllows: 'so lang, wie es die Seite zulässt',
  ventInSideSeam: 'den Schlitz in der Seitennaht, vom Saum nach oben',
  sideSewnDownToHere:
    'Die Seite wird bis hierher genäht, beide Kanten werden eingeschlagen und das Ende wird verriegelt',
  leftAndRightDiffer: 'Links und rechts sind verschieden',
  drawnWhole: 'Links und rechts sind verschieden, darum wird das Teil ganz gezeichnet',
  halvesMeetAtCentre: 'Beide Hälften treffen sich an der Mittellinie',
  dartsBecomeOneSeam: 'Beide Abnäher werden eine Naht; zeichne sie glatt über Q',
  dartMoved: {
    shoulder: 'Die Seite wird glatt gezeichnet, wo ihr Abnäher war',
    neck: 'Die Seite wird glatt gezeichnet, wo ihr Abnäher war',
    armhole: 'Die Seite wird glatt gezeichnet, wo ihr Abnäher war',
    french: 'Die Seite wird glatt gezeichnet, wo ihr Abnäher war',
    waist:
      'Der Taillenabnäher wird um ebenso viel weiter, und ein Saum darunter wird glatt gezeichnet',
    centreFront: 'Die vordere Mitte wird eine Naht',
  },
  bodiceEndsAtWaist: 'Das Oberteil endet an seiner Taillennaht, der Rock wird für sich gezeichnet',
}
