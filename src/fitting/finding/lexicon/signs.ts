/** What the cloth does. */
import type { Concepts } from '../concept.ts'

export const SIGNS = {
  loose: {
    kind: 'sign',
    said: 'loose',
    words:
      'loose, loosely, baggy, bagging, bags, slack, slouchy, roomy, floppy, flop, flops, sloppy, slop, saggy, flabby, shapeless, boxy, sack, sacklike, tent, tents, tenty, swims, swim, swimming, drown, drowning, swamp, swamps, ballooning, billow, billows, billowy, unfitted, not fitted, not snug, too easy, voluminous, poofy, blousy, gapes loose, hang loose, hanging loose, maternity, room to spare, lax, lots of room, loads of room, too much room, much room, too roomy, give, puffs out, parachute',
  },
  extra: {
    kind: 'sign',
    said: 'too much cloth',
    words:
      'extra, excess, surplus, spare, superfluous, leftover, too much, too much fabric, too much cloth, too much material, lots of fabric, loads of fabric, loads, lot of, lots, heaps, tons, plenty, handful, fistful, abundance, overmuch, much material, more than enough, much fabric, too many fabric, ample',
  },
  pinch: {
    kind: 'sign',
    said: 'can be pinched out',
    words:
      'pinch out, pinch, can pinch, could pinch, grab, pull away, pull out, take in, taking in, taken in, pin out, pin in, could pin, fold out, tuck out, grab a handful, pull it out',
  },
  big: {
    kind: 'sign',
    said: 'too big',
    words:
      'big, bigger, large, huge, massive, enormous, gigantic, giant, oversized, oversize, size too big, sizes too big, sizes too large, humongous, ginormous, cavernous, greater, grown, two of me',
  },
  wide: {
    kind: 'sign',
    said: 'too wide',
    words:
      'wide, broad, width, breadth, spread out, far apart, farther apart, further apart, too far apart, wide apart, wide set',
  },
  tight: {
    kind: 'sign',
    said: 'tight',
    words:
      'tight, tightly, snug, snugly, close fitting, restrict, restrictive, restricting, restriction, constrict, constricting, constrained, confining, too fitted, uncomfortable, straitjacket, corset, cramped, jammed, stuffed, sausage casing, sausage arms, sausage skin, like a sausage, bandaged, bandage, squash, squashed, squashing, squish, squished, squeeze, squeezes, squeezed, squeezing, compress, compressed, crush, crushed, clamp, clamped, vice, crammed, no room, not enough room, no ease, no space, not enough space, too little room, too little space, tourniquet, rubber band, boa constrictor, cling, clings, clingy, circulation, suffocate, bursting, busting, squeezed in, seat belt, body hugging, painfully close, little room, not room',
  },
  strain: {
    kind: 'sign',
    said: 'strained',
    words:
      'strain, strains, strained, straining, tension, tense, taut, taught, taught line, stretch, stretched, stretches, stretching, stress, stressed, under pressure, drawn tight, tension line, strain line, rope, tug, tight line, tight wrinkle, tight fold, pulled wrinkle, like a bowstring, tent pole, taut line, stretch line, stressed line, under strain',
  },
  pull: {
    kind: 'sign',
    said: 'pulls',
    words:
      'pull, pulls, pulled, pulling, drag, drags, dragged, dragging, drag line, dragline, pull line, haul, hauls, yank, yanks, yanked, tugs, tugging, draw, draws, drawn, whisker, whiskers, drags down, smile line, smile lines, hitch',
  },
  grip: {
    kind: 'sign',
    said: 'grips',
    words:
      'grip, grips, gripping, hold, holding, holds, bind, binds, binding, bound, grabs, grabbing, hug tight, clutch, clutches, seize',
  },
  dig: {
    kind: 'sign',
    said: 'cuts in',
    words:
      'dig, digs, digging, cut, cuts, cutting, cut in, cuts into, cut into, bite, bites, biting, nip, nips, nippin, rub, rubs, rubbing, chafe, chafes, scratch, scratches, scratchy, saw into, saws, sawing, hurt, hurts, pain, paining, painful, sore, red mark, mark, leaves a mark, raw, press, presses, pressing, pressure, crutch, crutches, jab, irritates, irritate, digs in, wedge, wedged, stab, stabs, poke me, pokes me, pinches, pinching',
  },
  small: {
    kind: 'sign',
    said: 'too small',
    words:
      'small, tiny, wee, little, shrink, shrunk, size too small, too small, not enough, insufficient, too little, lacking, lacks, scant, scanty, skimpy, skimp, mean, not close, will not close, can not close, will not do up, can not do up, do not close, can not zip, will not zip, can not button, can not fasten, will not fasten, can not get it on, barely get it on, hardly get it on, will not go on, can not get into, miniature, mini, undersized, child size, dolls clothes, less, can not do it up, not fit over, will not meet, do not meet, will not button, can not shut, not big enough, edges do not meet, will not go over, will not fit',
  },
  narrow: {
    kind: 'sign',
    said: 'too narrow',
    words:
      'narrow, not wide enough, not broad enough, too close together, close together, close set',
  },
  burst: {
    kind: 'sign',
    said: 'bursts open',
    words:
      'burst, bursts, bursting open, pop, pops, popped, popping, pop open, rip, rips, ripped, ripping, split, splits, splitting, tear, tears, tearing, fly off, flying off, spring open, come undone, comes undone, undone, bust open, pop stitches, stitches pop, explode, hulk',
  },
  gape: {
    kind: 'sign',
    said: 'gapes',
    words:
      'gape, gapes, gaping, gap, gaps, gapping, gaposis, gappy, stand away, stands away, stand off, stands off, standing away, standing off, stand proud, stands proud, stand clear, fall open, falls open, hang open, hangs open, open up, opens up, gap open, not lie flat, will not lie flat, do not lie flat, not lying flat, not sit flat, will not sit flat, not lie on, not lying on, not touch, do not touch, not touching, not close to, not hug, away from body, away from skin, away from me, off skin, off the skin, off body, float, floats, floating, floaty, hover, hovers, hovering, daylight, lift off, lifts off, lift away, lifts away, lifted clear, bow out, bows out, pout, pouts, flap, flaps, flapping, flap open, two fingers, put my hand down, fingers under, see down, stick out from, stand out from, yawn, yawns, mouth, not sitting to body, empty space, space between, not flush, distance from body, hang away, hangs away, standing edge, not laying flat, do not lay flat, will not lay flat, loop, in air, in the air, air under, air between, up in air, not hugging, not against, unfilled gap',
  },
  open: {
    kind: 'sign',
    said: 'opens',
    words:
      'open, opens, opened, opening, spread, spreads, come apart, pulls apart, pull apart, diamond, diamonds, hole between, holes between, peekaboo, window, windows, will not stay shut, will not stay closed, safety pin',
  },
  stickUp: {
    kind: 'sign',
    said: 'stands up',
    words:
      'stand up, stands up, stood up, stick up, sticks up, sticking up, poke up, pokes up, stand upright, raised, rises off, stands high, lifts up off, up in the air, pokes in the air, not lying down, will not lie down, not lie down, will not stay down, stands on end, sits up',
  },
  stickOut: {
    kind: 'sign',
    said: 'sticks out',
    words:
      'stick out, sticks out, sticking out, stuck out, stand out, stands out, jut, juts, jut out, jutting, poke out, pokes out, poking out, protrude, protrudes, protruding, project, projects, flare, flares, flare out, flies out, fly out, flying out, kick out, kicks out, fly away, wing out, pop out, pops out, bulge out, push out, pushes out, pushed out, shelf',
  },
  wing: {
    kind: 'sign',
    said: 'like a wing',
    words:
      'wing, wings, winged, fin, fins, aeroplane, airplane, plane, helicopter, batman, bat, bird, butterfly, angel, flying nun, pagoda, flying, take off, fly, hen wing, bat wing, penguin, superhero, cape stands, shark fin, spaceship, space suit, epaulettes, flying saucer',
  },
  fold: {
    kind: 'sign',
    said: 'folds',
    words:
      'fold, folds, folded, crease, creases, creasing, creased, wrinkle, wrinkles, wrinkled, wrinkly, wrinkling, line, lines, rumple, crumple, crumples, crumpled, ridge, corrugation, swag, swags, curtain, curtains, furrow, furrows, crinkle line, pleat, pleats, tuck, tucks, fold over, folding, buckle, buckles, buckling, accordion, concertina, stacks, ladder, wave, waves, frown line',
  },
  bunch: {
    kind: 'sign',
    said: 'bunches up',
    words:
      'bunch, bunches, bunched, bunching, bunch up, roll, rolls, rolled, rolling, sausage of fabric, sausage, tyre, tire, lump, lumps, lumpy, heap, heaps up, pool, pools, pooling, puddle, puddles, puddling, pile, piles, piles up, ruck, rucks, rucking, rucked, scrunch, scrunches, scrunched, bulk, bulky, wad, wodge, wad of fabric, collects, collect, hammock, scarf, ridge of cloth, gathers up, thick, clump, cushion, pillow, pillows, roly poly, mound, pads, crumples up, squidge, ball up, balls up, full of fabric, excess fabric collects, rolls up, concertinas up, snake of fabric, build up, builds up, fullness, knot, knots, parcel, bundle',
  },
  pucker: {
    kind: 'sign',
    said: 'puckers',
    words:
      'pucker, puckers, puckered, puckering, puckery, gather, gathers, gathered, gathering, ruffle, ruffles, ruffled, ruche, ruched, crinkle, crinkles, crinkly, scallop, scallops, smocked, little tucks, tiny pleats, tiny tucks, frills, shirred, small pleats, mini pleats',
  },
  bubble: {
    kind: 'sign',
    said: 'bubbles',
    words:
      'bubble, bubbles, bubbling, dimple, dimples, pimple, blister, puff, puffs, puffy, puff up, balloon, balloons, ballon, ball, pocket, pockets, pouch, pouches, blob, nub, nubbin, bubble out, puffed, poof, poofs, pillowy, volcano, small bag, dome',
  },
  bulge: {
    kind: 'sign',
    said: 'bulges',
    words:
      'bulge, bulges, bulging, bump, bumps, bumpy, swell, swells, pooches out, pouts out, hump in cloth',
  },
  pointy: {
    kind: 'sign',
    said: 'pointed',
    words:
      'pointy, pointed, pointing out, poke, pokes, poking, pokey, poky, cone, cones, conical, cone bra, torpedo, missile, rocket, bullet bra, madonna, spike, spiky, sharp, traffic cone, headlight, headlights, ice cream cone, sharp poke, nippley, bullet, witch hat, fake nipple, extra nipple, second nipple',
  },
  peak: {
    kind: 'sign',
    said: 'a peak or a dent in the line',
    words:
      'peak, peaks, spike at shoulder, nick, notch in line, kink, kinks, jog, jogs, angle, not smooth, is not smooth, v shaped dip, dent, dents, dip in curve, scooped, scoop at join, corner sticks out, bump in line, ear, ears, step in line, sharp angle, broken line, not one curve, not a smooth curve, horn, horns, dog ear, beak, notch',
  },
  wavy: {
    kind: 'sign',
    said: 'wavy',
    words:
      'wavy, ripple, ripples, rippled, rippling, ripply, flute, flutes, fluted, lettuce, lettuce edge, frilly, frill, undulate, undulates, undulating, ruffly, potato crisp, crisp, wobbly, seaweed, not lie smooth, stretched out, stretched out of shape, sea waves',
  },
  sCurve: {
    kind: 'sign',
    said: 'bends in a curve',
    words:
      's curve, s shaped, letter s, an s, like an s, curve, curves, curved, curvy, bow, bows, bowed, snake, snakes, snaky, zigzag, zig zag, wiggly, wiggle, wiggles, meander, bend, bends forward, bent line, arch, arches, arched, wavers, squiggly, squiggle, wander, wanders, serpentine, parenthesis, bracket, banana',
  },
  sag: {
    kind: 'sign',
    said: 'sags',
    words:
      'sag, sags, sagging, droop, droops, drooping, droopy, slump, slumps, drop, drops, dropped, dropping, hang down, hangs down, hang low, hangs low, dip, dips, dipping, dipped, fall down, falls down, sink, sinks, sunk, flags, slouch, slouches, go down, goes down',
  },
  hang: {
    kind: 'sign',
    said: 'hangs',
    words: 'hang, hangs, hanging, drape, drapes, draping, dangle',
  },
  rise: {
    kind: 'sign',
    said: 'rides up',
    words:
      'ride up, rides up, riding up, rode up, hike, hikes, hike up, hikes up, climb, climbs, climbing, creep up, creeps up, creeping up, rise, rises, rising, rose, lift, lifts, lifting, lifted, lift up, kick up, kicks up, hitch up, hitches up, hitched, hitched up, go up, goes up, going up, come up, comes up, coming up, jump up, jumps up, hoist, hoists, pull up, pulls up, pulled up, pulling up, dragged up, untuck, untucks, crawl up, crawls up, ride, rides, riding, work up, works its way up, tip up, tips up, swing up, raise, push up, pushes up, flip up, flips up, shoot up, shoots up, inch up, bob up, crop top, moves up, hauls up, popping up, slide up, slides up, hop up',
  },
  slide: {
    kind: 'sign',
    said: 'slides',
    words:
      'slide, slides, sliding, slid, slip, slips, slipping, slippery, shift, shifts, migrate, migrates, move, moves, travel, travels, travelled, drift, drifts, creep, creeps, creeping, work its way, wander off, walks, fall off, falls off, falling off, will not stay up, will not stay on, keep falling, slide off, slip off, tip, tips over, tip over, fall, falls, falling, lunge, lunges, topples',
  },
  swing: {
    kind: 'sign',
    said: 'swings',
    words:
      'swing, swings, swinging, veer, veers, run, runs, running, sway, sways, thrown, throw, pendulum, swerve, goes off, stray, go, goes, kick, move toward, shoots, pulled toward, heads',
  },
  tilt: {
    kind: 'sign',
    said: 'tilts',
    words:
      'tilt, tilts, tilted, tilting, slope, slopes, sloping, slant, lean, leans, leaning, list, not plumb, out of plumb, incline, tip down',
  },
  twist: {
    kind: 'sign',
    said: 'twists',
    words:
      'twist, twists, twisted, twisting, spiral, spirals, spiralling, corkscrew, corkscrews, rotate, rotates, rotating, rotation, turn, turns, turning, turned, wind, winds, skew, skewed, screw, screws, barber pole, wrap, wraps round, swivel, swivels, pitch, pitched, wring, wrung, off pitch, off grain, grain, grainline, grain line, warp thread, selvedge, selvage, bias',
  },
  uneven: {
    kind: 'sign',
    said: 'uneven',
    words:
      'uneven, unevenly, crooked, crookedly, wonky, unlevel, not level, is not level, not horizontal, not parallel, squint, lopsided, lop sided, asymmetric, asymmetrical, asymmetry, not straight, is not straight, skew whiff, skewwhiff, askew, unequal, not equal, not same, not the same, do not match, mismatched, irregular, out of balance, unbalanced, is not balanced, not balanced, cockeyed, wry, all over place, squinty, on the huh, cack, skwee, wonkier, is not even, not even, higgledy, out of level, off level, unsymmetrical, different heights, different lengths',
  },
  choke: {
    kind: 'sign',
    said: 'chokes',
    words:
      'choke, chokes, choking, chocking, chokey, choked, strangle, strangles, strangling, strangled, throttle, throttled, throttling, gag, gags, gagging, suffocates, noose, swallow, asphyxiate, garrotte, hanged, chokehold, can not swallow, dog collar, thrapple',
  },
  show: {
    kind: 'sign',
    said: 'shows what should be covered',
    words:
      'show, shows, showing, see, seen, sees, visible, peep, peeps, peeping, peek, peeks, display, on display, on show, flash, flashes, flashing, expose, exposes, exposed, reveal, reveals, look in, look into, see in, see into, see inside, see up, view, flaunt, indecent',
  },
  empty: {
    kind: 'sign',
    said: 'stands empty',
    words:
      'empty, hollow, hollows, cave, caves in, cave in, caving, collapse, collapses, collapsed, collapsing, sunken, concave, deflated, deflate, nothing to fill, not fill, not filling, do not fill, not filled, unfilled, nothing in it, caved, flattened balloon, dented in, falls in, vacant',
  },
  flat: {
    kind: 'sign',
    said: 'flat',
    words:
      'flat, flatten, flattens, flattened, uniboob, monoboob, minimised, flat as a pancake, pancake, shallow',
  },
  long: {
    kind: 'sign',
    said: 'too long',
    words:
      'long, length, lengthy, too much length, extra length, excess length, overlong, too many length',
  },
  short: {
    kind: 'sign',
    said: 'too short',
    words:
      'short, shorten, shortened, cropped, not long enough, length less, not enough length, brief, will not reach, do not reach, not reach, do not come down, stops short, short of',
  },
  high: { kind: 'sign', said: 'too high', words: 'high, too high, highest, up high, higher up' },
  low: {
    kind: 'sign',
    said: 'too low',
    words: 'low, too low, lowest, deep, too deep, too far down, far down, low down',
  },
  past: {
    kind: 'sign',
    said: 'runs past',
    words:
      'past, beyond, too far, overshoot, overshoots, overrun, goes over, run over, runs over, ran over, further than, farther than, not stop, should stop, should end, stop sooner, end sooner',
  },
  misses: {
    kind: 'sign',
    said: 'misses its place',
    words:
      'miss, misses, missing, wrong place, wrong spot, not lined up, not line up, do not line up, misaligned, misplaced, aim, aims, aiming, point to, points to, pointing, point at, points at, points, wrong height, off target, do not hit, not at, look inside, look outward, cross eyed, wall eyed, wonk eyed, squinting',
  },
  catches: {
    kind: 'sign',
    said: 'catches',
    words:
      'catch, catches, catching, stuck, sticks on, stick on, gets stuck, get stuck, snag, snags, hang up on, hangs up on, not slide down, will not go down, will not slide down, not go down, will not pull down, will not go over, not come down',
  },
  ease: {
    kind: 'sign',
    said: 'to be eased in',
    words:
      'ease, eased, easing, ease in, too much to ease, too much ease, set in, setting in, set sleeve in, sew sleeve in, sewing sleeve in, fit in the armhole, fit into armhole, go into armhole, fit sleeve into, insert, inserting, set the sleeve',
  },
  angleFlat: {
    kind: 'sign',
    said: 'horizontal in the air',
    words:
      'straight out, sideways out, out sideways, horizontally out, out to the side, parallel to floor',
  },
  cannot: {
    kind: 'sign',
    said: 'cannot',
    words:
      'can not, cannot, unable, impossible, will not, will not let, hard to, hardly, barely, difficult, struggle, stop me, stops me, prevents, hinders, limits, limited, no mobility, impossible to, not able, no movement, hampers',
  },
  smooth: { kind: 'sign', said: 'smooth', words: 'smooth, neat' },
  new: {
    kind: 'sign',
    said: 'different now',
    words:
      'different, differently, changed, change, worse, since, now, no longer, not any more, anymore, after washing, behave, behaves',
  },
  stiff: {
    kind: 'sign',
    said: 'stiff',
    words: 'stiff, crisp cloth, rigid, not drape, will not drape, do not drape',
  },
  soft: { kind: 'sign', said: 'soft', words: 'soft, softly, gentle' },
} as const satisfies Concepts
