/** What she says of her figure: kept apart from the cloth, and never said back as a fault. */
import type { Sayings } from '../concept.ts'

export const FIGURES = {
  slopingShoulders: {
    said: 'shoulders slope more than drafted',
    words:
      'sloping shoulders, sloped shoulders, slopy shoulders, droopy shoulders, bottle shoulders, shoulders slope, shoulders drop, shoulders slant, low shoulders, shoulder pad, shoulder pads, champagne bottle, sloping shoulder, my shoulders are sloping, slopey shoulders, shoulders fall away, shoulders droop, shoulders slope down, very sloped, steep shoulders, shoulders are sloped, sloped shoulder, drooping shoulders, drop shoulders, coke bottle, wine bottle shoulders, folded hanky, hanky, sock under shoulder, shoulders slope more, shoulder slope more, padding under shoulder, stuff under shoulder',
  },
  squareShoulders: {
    said: 'shoulders slope less than drafted',
    words:
      'square shoulders, square shoulder, square shouldered, square figure, straight shoulders, hanger shoulders, coat hanger, hanger, shoulders too sloped for me, high shoulders, shoulders are straighter, shoulders straight, shoulders are square, boxy shoulders, bony shoulders, shoulders slope too much, slope too much, slope too steep, slope is too steep, slopes more than me, squared shoulders, very square, boxy shoulder, shoulders are level, level shoulders, like a coat hanger, like a hanger, clothes hanger, straight across shoulders, shoulders straighter, no slope, little slope, less slope, less sloped, hardly slope, horizontal shoulders, shoulders do not slope, shoulders up by my ears, shoulders too sloping, sloping too much, slope too strong, not enough height at shoulder',
  },
  narrowShoulders: {
    said: 'shoulders narrower than drafted',
    words:
      'narrow shoulders, small shoulders, small frame, my frame is small, tiny shoulders, slight shoulders, narrow shouldered, narrow in shoulder, narrow in shoulders, narrower shoulders, bird like, slight frame, slight build, petite shoulders, dainty shoulders, i am narrow shouldered, tiny frame, little shoulders',
  },
  broadShoulders: {
    said: 'shoulders wider than drafted',
    words:
      'broad shoulders, wide shoulders, swimmers shoulders, swimmer, broad shouldered, shoulders are wider, my shoulders are wide, my shoulders are broad, wide in shoulders, broad in shoulders, broad frame, wide frame, big shoulders, strong shoulders, rower shoulders, large frame, big framed, wide shouldered, athletic shoulders, volleyball player, muscular shoulders',
  },
  forwardShoulders: {
    said: 'shoulder joint further forward',
    words:
      'forward shoulders, forward shoulder, shoulders roll forward, rolled shoulders, shoulders forward, slumped shoulders, hunched shoulders, desk worker, computer shoulders, rounded shoulders, shoulders come forward, shoulders roll, shoulders rolled forward, slouched shoulders, slouching, shoulders hunch forward, shoulders hunched, hunch at computer, hunch at a computer, hunched at desk, shoulders slump, shoulders slumped, shoulders curl, shoulders curled forward, shoulders pull forward, typing posture, computer posture, desk posture, round forward, gamer posture, phone posture, arms hang forward, slumping forward, slouch',
  },
  oneShoulderLow: {
    said: 'one shoulder lower',
    words:
      'one shoulder lower, shoulder is lower, shoulder lower, shoulder higher, uneven shoulders, shoulder is lower than, one shoulder is higher, one shoulder drops, one shoulder sits lower, shoulders not same height, scoliosis, shoulders do not match, shoulder hanging lower, carry a bag, handbag, shoulder is down, low shoulder, low left shoulder, low right shoulder, one shoulder is lower, one shoulder lower than other, asymmetrical shoulders, shoulder drops, shoulder droops, right shoulder lower, left shoulder lower, right shoulder is lower, left shoulder is lower, one lower shoulder, lower shoulder, shoulders uneven, shoulders different, shoulders differ, unequal shoulders, shoulders at different heights, shoulders are uneven, spine curve, physio, physiotherapist, chiropractor, one shoulder dips, one shoulder high, high shoulder, violinist',
  },
  roundBack: {
    said: 'upper back rounder than drafted',
    words:
      'round back, rounded back, round shoulders, round upper back, rounded upper back, kyphosis, stoop, stooped, stooping, hunch, hunched, hunched back, hunchback, dowager back, curved upper back, round shouldered, bent back, poor posture, bad posture, slouch posture, hunched over, bit of a stoop, a stoop, rounded upper, rounded shoulders back, curved back, curve in upper back, curved shoulders, dowagers back, slumped back, hunchy, turtle back, tortoise, shell back, bowed back, round upper, hunched posture, old lady back, osteoporosis, crooked back, roundback, shoulders rounded, upper back is round, upper back curve, rounded shoulder, humped back',
  },
  erect: {
    said: 'back straighter than drafted',
    words:
      'erect, erect figure, erect posture, erect back, upright posture, very upright, stand upright, stand straight, stand very straight, stand tall, soldier, ballet, ballerina, ballet posture, straight back, flat back, straight posture, very straight, good posture, military, guardsman, poker straight, ramrod, upright stance, straight as a board, straight as a rod, straight as ruler, straight as a ruler, ramrod straight, very erect, stiff posture, marching posture, army posture, dancer, dancers posture, gymnast, model posture, proud posture, chest out posture, standing to attention, stand at attention, over upright, bolt upright, flat upper back, back is flat, straight spine, upright back',
  },
  hollowBack: {
    said: 'back hollower than drafted',
    words:
      'sway back, swayback, sway backed, hollow back, hollow cross, lordosis, curved lower back, arched back, deep curve in back, saddle back, curved spine, back curves in, deep inward curve, inward curve, arched lower back, curve in lower back, banana back, hollow in back, lumbar curve, deep lumbar, swaybacked, sway back adjustment, swayed back, my back dips, back dips in, bum sticks out, bottom sticks out, pronounced curve, s shaped spine, tilted pelvis, gymnast back',
  },
  hump: {
    said: 'curve at the base of the neck',
    words:
      'hump, dowager, dowagers hump, buffalo hump, widows hump, neck hump, bump on spine, bump at top of spine, lump at base of neck, fatty pad, fleshy lump, stout nape, fat on neck, tech neck, hill under neck, bump on my neck, vertebra sticks out, spine sticks out, base of neck bump, bump at base of neck, fat on neck back, little hill, fat pad, bump of neck, lump at the back of the neck, knob at back of neck, big neck bone, neck bump, bump below nape, bump at nape, nape bump, lump at top of spine, lump on spine, lump at the top of my spine, lump on neck, bump on back of neck, bump at back of neck, knot at base of neck, hill at neck, hump on neck, camel, camel hump, swelling at neck, fat neck roll, fatty neck, mound at nape, neck mound, bulge at nape, prominence at nape, curved neck, forward head, head forward, poking neck, chicken neck, turtle neck posture, text neck, bone at base of neck, knob of spine, first vertebra, bump at bottom of my neck, knob at bottom of neck, lump at bottom of neck, knuckle of spine, bump where neck begins, knob at base of neck',
  },
  prominentBlades: {
    said: 'blades stand out',
    words:
      'prominent blades, prominent shoulder blades, blades stick out, shoulder blades stick out, bony shoulder blades, sharp shoulder blades, shoulder blades poke, bony back, winged blades, winged scapula, blades poke, shoulder blade bones, blades poke out, sharp blades, blades like wings, angel wings on my back, blades protrude, protruding blades, protruding shoulder blades, scapula sticks, scapulas stick out, jutting blades, blades jut, knobbly back, skinny back',
  },
  fullBust: {
    said: 'bust fuller than drafted',
    words:
      'full bust, full busted, big bust, big busted, large bust, busty, big boobs, large breasts, buxom, full bust adjustment, well endowed, top heavy, dd cup, big chest, prominent bust, heavy bust, weight of my bust, big breasted, large chested, generous bust, ample bust, ample bosom, huge boobs, huge bust, my bust is big, my boobs are big, fuller bust, fuller cup, bigger bust, larger bust, h cup, g cup, f cup, e cup, double d, very busty, heavy chested, big boobed, large boobs, because of my chest, because of my bust, because of my boobs, large cup, big up top, curvy up top, matronly, nursing bust, breastfeeding',
  },
  smallBust: {
    said: 'bust smaller than drafted',
    words:
      'small bust, small busted, flat chested, flat chest, flat bust, small boobs, small breasts, no boobs, small bust adjustment, nothing up top, a cup, aa cup, little bust, not enough bust, no bust, my bust is smaller, not enough of me, nothing to fill it, tiny boobs, ironing board, small chested, smaller bust, petite bust, barely any bust, hardly any bust, hardly any boobs, no chest, little boobs, tiny bust, mosquito bites, fried eggs, bee stings, flat as a board, flat as a pancake front, pancake chest, itty bitty, aa, nothing there, mastectomy, boyish, boyish chest, lost my bust, boobs shrank, not much bust, not much up top, not enough boob, flattish chest, smaller boobs',
  },
  hollowChest: {
    said: 'upper chest hollower than drafted',
    words:
      'hollow chest, sunken chest, concave chest, chest is hollow, chest caves, chest is concave, bony chest, chest dips in, thin chest, hollow below collarbone, bony under collarbones, bony below collarbone, hollow under collarbone, dip below collarbone, chest sinks, chest sinks in, chest goes in, thin upper chest, skinny chest, pigeon chest, pectus, bony upper chest, scrawny chest, hollow at collarbone',
  },
  longWaisted: {
    said: 'longer to the waist than drafted',
    words:
      'long waisted, long torso, long body, long bodied, tall in body, i am tall, long waist, long in body, long in the body, long in torso, long from shoulder, long trunk, tall torso, im tall, longer torso, long midriff, long bodice needed, long upper body',
  },
  shortWaisted: {
    said: 'shorter to the waist than drafted',
    words:
      'short waisted, short torso, petite, i am short, i am small, short body, short waist, short bodied, short in body, short in the body, short in torso, short from shoulder, short trunk, shorter torso, im short, short midriff, no torso, low bust to waist, short upper body, im petite, five foot nothing',
  },
  looksPregnant: {
    said: 'stands out over the abdomen',
    words:
      'pregnant, look pregnant, looks pregnant, expecting, with child, baby on the way, six months gone, months gone, up the duff, preggers, preggo, expectant, when am i due, when are you due, baby due, due date, asked if i was expecting, with a baby, mum to be, seat on the bus',
  },
  widerHips: {
    said: 'hips wider than drafted',
    words:
      'wide hips, big hips, hips are wider, pear shaped, curvy hips, big bum, big bottom, large seat, big booty, bum too big, hippy, ample hips, childbearing hips, child bearing hips, hourglass hips, broad hips, full hips, large hips, curvy bottom, pear shape, pear, triangle shape, big behind, big rear, large bottom, large bum, round bum',
  },
  narrowChest: {
    said: 'chest narrower than drafted',
    words:
      'narrow chest, my chest is narrow, narrow across front, narrow rib cage, narrow front, narrow in front, narrow up top, slim chest, small chest width, thin across chest, narrow ribcage, skinny across front, bird chest',
  },
  narrowBack: {
    said: 'back narrower than drafted',
    words:
      'narrow back, my back is narrow, thin back, slim back, narrow across back, small back, slender back, slight back, back is narrow, tiny back, narrow in the back',
  },
  broadBack: {
    said: 'back broader than drafted',
    words:
      'broad back, wide back, muscular back, strong back, my back is broad, rower, big back, muscly back, broad across back, wide across back, swimmers back, strong across back, muscular across back, climber, climbers back, lats, big lats, rowing, large back, hefty back',
  },
} satisfies Sayings
