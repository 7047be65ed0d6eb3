/** What she says of her figure: kept apart from the cloth, and never said back as a fault. */
import type { Concepts } from '../concept.ts'

export const FIGURES = {
  slopingShoulders: {
    kind: 'figure',
    said: 'shoulders slope more than drafted',
    words:
      'sloping shoulders, sloped shoulders, slopy shoulders, droopy shoulders, bottle shoulders, shoulders slope, shoulders drop, shoulders slant, low shoulders, shoulder pad, shoulder pads, champagne bottle, sloping shoulder, my shoulders are sloping',
  },
  squareShoulders: {
    kind: 'figure',
    said: 'shoulders slope less than drafted',
    words:
      'square shoulders, square shoulder, square shouldered, square figure, straight shoulders, hanger shoulders, coat hanger, hanger, shoulders too sloped for me, high shoulders, shoulders are straighter, shoulders straight, shoulders are square, boxy shoulders, bony shoulders, shoulders slope too much, slope too much, slope too steep, slope is too steep, slopes more than me',
  },
  narrowShoulders: {
    kind: 'figure',
    said: 'shoulders narrower than drafted',
    words:
      'narrow shoulders, small shoulders, small frame, my frame is small, tiny shoulders, slight shoulders, narrow shouldered',
  },
  broadShoulders: {
    kind: 'figure',
    said: 'shoulders wider than drafted',
    words:
      'broad shoulders, wide shoulders, swimmers shoulders, swimmer, broad shouldered, shoulders are wider, my shoulders are wide, my shoulders are broad',
  },
  forwardShoulders: {
    kind: 'figure',
    said: 'shoulder joint further forward',
    words:
      'forward shoulders, forward shoulder, shoulders roll forward, rolled shoulders, shoulders forward, slumped shoulders, hunched shoulders, desk worker, computer shoulders, rounded shoulders, shoulders come forward, shoulders roll, shoulders rolled forward, slouched shoulders, slouching',
  },
  oneShoulderLow: {
    kind: 'figure',
    said: 'one shoulder lower',
    words:
      'one shoulder lower, shoulder is lower, shoulder lower, shoulder higher, uneven shoulders, shoulder is lower than, one shoulder is higher, one shoulder drops, one shoulder sits lower, shoulders not same height, scoliosis, shoulders do not match, shoulder hanging lower, carry a bag, handbag, shoulder is down, low shoulder, low left shoulder, low right shoulder, one shoulder is lower, one shoulder lower than other, asymmetrical shoulders',
  },
  roundBack: {
    kind: 'figure',
    said: 'upper back rounder than drafted',
    words:
      'round back, rounded back, round shoulders, round upper back, rounded upper back, kyphosis, stoop, stooped, stooping, hunch, hunched, hunched back, hunchback, dowager back, curved upper back, round shouldered, bent back, poor posture, bad posture, slouch posture, hunched over',
  },
  erect: {
    kind: 'figure',
    said: 'back straighter than drafted',
    words:
      'erect, erect figure, erect posture, erect back, upright posture, very upright, stand upright, stand straight, stand very straight, stand tall, soldier, ballet, ballerina, ballet posture, straight back, flat back, straight posture, very straight, good posture, military, guardsman, poker straight, ramrod',
  },
  hollowBack: {
    kind: 'figure',
    said: 'back hollower than drafted',
    words:
      'sway back, swayback, sway backed, hollow back, hollow cross, lordosis, curved lower back, arched back, deep curve in back, saddle back, curved spine, back curves in',
  },
  hump: {
    kind: 'figure',
    said: 'curve at the base of the neck',
    words:
      'hump, dowager, dowagers hump, buffalo hump, widows hump, neck hump, bump on spine, bump at top of spine, lump at base of neck, fatty pad, fleshy lump, stout nape, fat on neck, tech neck, hill under neck, bump on my neck, vertebra sticks out, spine sticks out, base of neck bump, bump at base of neck, fat on neck back, little hill, fat pad, bump of neck, lump at the back of the neck, knob at back of neck, big neck bone',
  },
  prominentBlades: {
    kind: 'figure',
    said: 'blades stand out',
    words:
      'prominent blades, prominent shoulder blades, blades stick out, shoulder blades stick out, bony shoulder blades, sharp shoulder blades, shoulder blades poke, bony back, winged blades, winged scapula, blades poke',
  },
  fullBust: {
    kind: 'figure',
    said: 'bust fuller than drafted',
    words:
      'full bust, full busted, big bust, big busted, large bust, busty, big boobs, large breasts, buxom, full bust adjustment, well endowed, top heavy, dd cup, big chest, prominent bust, heavy bust, weight of my bust, big breasted, large chested',
  },
  smallBust: {
    kind: 'figure',
    said: 'bust smaller than drafted',
    words:
      'small bust, small busted, flat chested, flat chest, flat bust, small boobs, small breasts, no boobs, small bust adjustment, nothing up top, a cup, aa cup, little bust, not enough bust, no bust, my bust is smaller, not enough of me, nothing to fill it, tiny boobs, ironing board',
  },
  hollowChest: {
    kind: 'figure',
    said: 'upper chest hollower than drafted',
    words:
      'hollow chest, sunken chest, concave chest, chest is hollow, chest caves, chest is concave, bony chest, chest dips in, thin chest, hollow below collarbone',
  },
  longWaisted: {
    kind: 'figure',
    said: 'longer to the waist than drafted',
    words: 'long waisted, long torso, long body, long bodied, tall in body, i am tall, long waist',
  },
  shortWaisted: {
    kind: 'figure',
    said: 'shorter to the waist than drafted',
    words:
      'short waisted, short torso, petite, i am short, i am small, short body, short waist, short bodied',
  },
  looksPregnant: {
    kind: 'figure',
    said: 'stands out over the abdomen',
    words: 'pregnant, look pregnant, looks pregnant, expecting, with child, baby on the way',
  },
  widerHips: {
    kind: 'figure',
    said: 'hips wider than drafted',
    words:
      'wide hips, big hips, hips are wider, pear shaped, curvy hips, big bum, big bottom, large seat, big booty, bum too big',
  },
  narrowChest: {
    kind: 'figure',
    said: 'chest narrower than drafted',
    words: 'narrow chest, my chest is narrow, narrow across front, narrow rib cage, narrow front',
  },
  narrowBack: {
    kind: 'figure',
    said: 'back narrower than drafted',
    words: 'narrow back, my back is narrow, thin back, slim back',
  },
  broadBack: {
    kind: 'figure',
    said: 'back broader than drafted',
    words:
      'broad back, wide back, muscular back, strong back, my back is broad, rower, big back, muscly back',
  },
} as const satisfies Concepts
