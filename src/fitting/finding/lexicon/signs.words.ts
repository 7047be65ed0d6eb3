/** What the cloth does. */
import type { Sayings } from '../concept.ts'

export const SIGNS = {
  loose: {
    said: 'loose',
    words:
      'loose, loosely, baggy, bagging, slack, slouchy, roomy, floppy, flop, flops, sloppy, slop, saggy, flabby, shapeless, boxy, sack, sacklike, tent, tents, tenty, swims, swim, swimming, drown, drowning, swamp, swamps, ballooning, billow, billows, billowy, unfitted, not fitted, not snug, too easy, voluminous, poofy, blousy, gapes loose, hang loose, hanging loose, maternity, room to spare, lax, lots of room, loads of room, too much room, much room, too roomy, give, puffs out, parachute, sags loosely, drapes loosely, flop about, flops about, flopping, flopped, wobble, wobbles, baggie, baggier, baggyness, bagginess, bag, limp, relaxed fit, slouches, easy fit, rattling around, rattle, rattles, room for two, hides a, could hide, could fit, fit a cat, cushion in, pillow in it, lots of space, loads of space, too much space, skims, skim, skims past, hangs straight, hang straight, hanging straight, straight up and down, not shaped, no shape, no shaping, no definition, not follow, do not follow, is not following, unshaped, tent like, like a tent, like a bag, like a sack, frumpy, potato sack, bin bag, duvet cover, nightie, nightgown, hospital gown, not close fitting, not figure hugging, ill fitting loose, flowing, ghost costume, bedsheet on me, marquee, circus tent, smock, muumuu, choir robe, wizard robe, bathrobe, dressing gown, roomier, sloppily, not held in, ungathered fullness, no hug, not hug, do not hug, unsupported, bellows, room for a pair, room for another, room for two, room for oranges, fit another person, could smuggle, could keep, hide a, space for',
  },
  extra: {
    said: 'too much cloth',
    words:
      'extra, excess, surplus, spare, superfluous, leftover, too much, too much fabric, too much cloth, too much material, lots of fabric, loads of fabric, loads, lot of, lots, heaps, tons, plenty, handful, fistful, abundance, overmuch, much material, more than enough, much fabric, too many fabric, ample, extras, oodles, bags of, masses, masses of, surfeit, too much stuff, superabundant, redundant, unneeded, unnecessary, unwanted fabric, overflow, enough for two, yards of, metres of, acres of, lashings, over abundance, overage, oversupply, generous, generously, so much fabric, so much cloth, so much material, so many folds, too many folds, more fabric than, more cloth than, more material than, double amount, waste of cloth, heap of, piles of, much stuff, fabric to spare, cloth to spare, excessive, excessively, mountain of, more than needed, more than i need, too full, over full, cut too generously',
  },
  pinch: {
    said: 'can be pinched out',
    words:
      'pinch out, pinch, can pinch, could pinch, grab, pull away, pull out, take in, taking in, taken in, pin out, pin in, could pin, fold out, tuck out, grab a handful, pull it out, pinch it, clip pegs, peg, pegs, bulldog clip, clothes peg, clip it, fold away, gather up in hand, pull a handful, pull away from me, lift away with fingers, hold out, tuck in fingers, can hold, nip in, nip it in, cinch, dart out, dart it out, could dart, take it in, be taken in, pin away, pinned away, pinned out, could take, stuff a pillow, fold out a tuck, grabbable',
  },
  big: {
    said: 'too big',
    words:
      'big, bigger, large, huge, massive, enormous, gigantic, giant, oversized, oversize, size too big, sizes too big, sizes too large, humongous, ginormous, cavernous, greater, grown, two of me, whopping, colossal, immense, vast, hefty, bulbous, roomiest, xxl, xl, giant size, jumbo, monster, mega, two sizes up, three sizes up, grown up clothes, mum clothes, mums clothes, dads shirt, kid in mum clothes, overlarge, outsize, outsized, biggest, bigly, size up, plus size on me, too much of everything, cut too big, too generous, sizeable',
  },
  wide: {
    said: 'too wide',
    words:
      'wide, broad, width, breadth, spread out, far apart, farther apart, further apart, too far apart, wide apart, wide set, widely, wider, widths, widest, wideness, too broad, broadly, spaced too widely, spaced wide, spaced apart, spaced far, too spaced, expansive, span',
  },
  tight: {
    said: 'tight',
    words:
      'tight, tightly, snug, snugly, close fitting, restrict, restrictive, restricting, restriction, constrict, constricting, constrained, confining, too fitted, uncomfortable, straitjacket, corset, cramped, jammed, stuffed, sausage casing, sausage arms, sausage skin, like a sausage, bandaged, bandage, squash, squashed, squashing, squish, squished, squeeze, squeezes, squeezed, squeezing, compress, compressed, crush, crushed, clamp, clamped, vice, crammed, no room, not enough room, no ease, no space, not enough space, too little room, too little space, tourniquet, rubber band, boa constrictor, cling, clings, clingy, circulation, suffocate, bursting, squeezed in, seat belt, body hugging, painfully close, little room, not room, skin tight, tight as a drum, like a drum, stretched like a drum, figure hugging too much, body con, bodycon, hugs too tight, hug the, hugs my, leggings, like leggings, shrink wrapped, shrinkwrap, shrink wrap, cling film, clingfilm, saran wrap, wetsuit, girdle, compression, compresses, constriction, constricts, cramps, cramp, confine, confined, restricted, restrictingly, restricts, too close, hugging too, snugger, snuggest, tighter than, tightens, tightening, tighten, cinches, cinching, throbbing, numb, numbs, pins and needles, groove, grooves, leaves a groove, leaves a line, welt, welts, dent in skin, imprint, imprints, flesh bulges, spill over, spills over, overflows, bulging out of it, mash, mashes, mashed, mashing, flattening me, smash, smashes, smushed, smush, smooshed, moosh, squooshed, breathe in to, hold my breath, suck in, breathing in, can not breathe, purple, going blue, turn blue, peel, peel it, shoehorn, wriggle in, squirm, wedge myself, lock, locks, lock up, locked, trapped, traps, imprisoned, straight jacket, straightjacket, mummy wrapped, like a mummy, taut band, elastic band, like a strap, like a belt, no slack, no give, no freedom, no play, no wiggle room, wiggle room, unyielding, poured in, painted on, ready to burst, second skin, filled up, overfilled, overstuffed, like sausage, sausages, boa, python, blood pressure cuff, tourniquets, fit to burst, too close fitting, not enough ease, lacking ease, lack of ease, needs more room, need more room, no wriggle room, not enough fabric, not enough cloth, not enough material, stuck in, more room, too little fabric, too little cloth, sausage tight, tight as, squeezed tight, red marks, red ring, red line, can hardly get into, splint',
  },
  strain: {
    said: 'strained',
    words:
      'strain, strains, strained, straining, tension, tense, taut, taught, taught line, stretch, stretched, stretches, stretching, stress, stressed, under pressure, drawn tight, tension line, strain line, rope, tug, tight line, tight wrinkle, tight fold, pulled wrinkle, like a bowstring, tent pole, taut line, stretch line, stressed line, under strain, strainy, strains at seams, stress line, stress lines, stress mark, stress marks, tensioned, tensing, tightly drawn, tugging line, tug lines, tug line, tension wrinkle, tension wrinkles, tension fold, tension folds, stretch mark, stretch marks, stretched out tight, at full stretch, overstretched, drawn in, drawn across, stretched thin, stretched across, stretched to limit, pulled tight, pulled taut, wrenched, wrenching, strings, string, like a string, two strings, guitar string, bow string, wire, cable, braces, suspenders, rigging, guy rope, guy ropes, tent ropes, spokes, rays, sunrays, star shaped, starfish, web, spiderweb, spider web, like a seatbelt, seatbelt, stitches straining, seam straining, seams straining, stitches stretched, about to give way, thread showing, seam grinning',
  },
  pull: {
    said: 'pulls',
    words:
      'pull, pulls, pulled, pulling, drag, drags, dragged, dragging, drag line, dragline, pull line, haul, hauls, yank, yanks, yanked, tugs, tugging, draw, draws, drawn, whisker, whiskers, drags down, smile line, smile lines, hitch, pully, pulling line, pulling lines, pull mark, pull marks, drawlines, draw lines, drag marks, drag mark, drag wrinkle, drag wrinkles, draglines, dragging line, pullings, traction, tow, lug, heave, heaves, jerks, jerk, wrestle, fight, fights, fighting, hauls up, tug at, tugs at, pulled in, pulled on, pulled over, gets pulled, being pulled, being tugged, being dragged, dragged in',
  },
  grip: {
    said: 'grips',
    words:
      'grip, grips, gripping, hold, holding, holds, bind, binds, binding, bound, grabs, grabbing, hug tight, clutch, clutches, seize, gripped, grippy, grasps, grasp, squeezing grip, encircle, encircles, clasp, clasps, hugs round, bites round, holds on',
  },
  dig: {
    said: 'cuts in',
    words:
      'dig, digs, digging, cut, cuts, cutting, cut in, cuts into, cut into, bite, bites, biting, nip, nips, nippin, rub, rubs, rubbing, chafe, chafes, scratch, scratches, scratchy, saw into, saws, sawing, hurt, hurts, pain, paining, painful, sore, red mark, mark, leaves a mark, raw, press, presses, pressing, pressure, crutch, crutches, jab, irritates, irritate, digs in, wedge, wedged, stab, stabs, poke me, pokes me, pinches, pinching, digging in, dug into, carve, carves, slice, slices, slicing, knife, garotte, welts, bruise, bruises, bruised, irritating, irritated, itches, itch, sting, stings, burns, burning, friction, rash, red line, red lines, red ring, weal, weals, sore spot, prick, pricks, prickly, abrade, grates, grinding, jammed, jams, jamming, jammed up, gouge, gouges, presses on, pressed, pressing on, presses in, pressing in, pokes in, cuts off, cutting off, hacks, chops, impale, scrape, scrapes, scraping, stabbing, pinch me, pinches me, bites me, bites my, hurts me, aches, ache, chafed, chafing, rubbed, nibbles, gnaw, gnaws, ligature, scratches me, cutting in, digs right in, irritation',
  },
  small: {
    said: 'too small',
    words:
      'small, tiny, wee, little, shrink, shrunk, size too small, too small, not enough, insufficient, too little, lacking, lacks, scant, scanty, skimpy, skimp, mean, not close, will not close, can not close, will not do up, can not do up, do not close, can not zip, will not zip, can not button, can not fasten, will not fasten, can not get it on, barely get it on, hardly get it on, will not go on, can not get into, miniature, mini, undersized, child size, dolls clothes, less, can not do it up, not fit over, will not meet, do not meet, will not button, can not shut, not big enough, edges do not meet, will not go over, will not fit, teeny, petite size, pint sized, dinky, meagre, miserly, stingy, short on fabric, short of cloth, child sized, kids size, toddler size, shrunken, shrinks, barbie, made for little sister, little sister, for my sister, dwarf, wont close, will not shut, edges will not meet, can not get my arm in, can not get arms in, can not get past, can not get over, will not pull over, can not pull it on, falls short, comes up short, printed too small, did not print, printed smaller, scaled, smaller size, size down, a size under, under size, not big, not large enough, isnt big enough, is not big enough, not go all way round, not enough to go round, gap to close, inch short of closing, does not close, do not fasten, does not fasten, unable to close, hard to close, hard to zip, zip will not close, zip will not go up, not zip, zip stuck, not done up, cannot be closed, deficient',
  },
  narrow: {
    said: 'too narrow',
    words:
      'narrow, not wide enough, not broad enough, too close together, close together, close set, narrower, narrowest, narrowly, slim cut, slender cut, too slim, insufficient width, lack of width, not enough width, lacks width, width is less, needs more width, less width, width missing, want of width, too close to each other, nearer together, too near together, crowd together, crowded, converge, converges, converging, cross eyed darts',
  },
  burst: {
    said: 'bursts open',
    words:
      'burst, bursts, bursting open, pop, pops, popped, popping, pop open, rip, rips, ripped, ripping, split, splits, splitting, tear, tears, tearing, fly off, flying off, spring open, come undone, comes undone, undone, bust open, pop stitches, stitches pop, explode, hulk, bursts at seams, heard the seam go, heard stitches, seam go, seam goes, seam gave, seam give way, gives way, give way, seam opened, seam opens, seam went, went ping, ping, pings, pinged, crack, cracks, cracked, rend, rends, rent, snap open, snapped, stitches go, stitches went, blow out, blew out, threads break, threads snap, flew off, shot off, fly open, flies open, came undone, unbuttons itself, unbutton, unbuttoning, unfastens, unfasten, come open, comes open, came open, rupture',
  },
  gape: {
    said: 'gapes',
    words:
      'gape, gapes, gaping, gap, gaps, gapping, gaposis, gappy, stand away, stands away, stand off, stands off, standing away, standing off, stand proud, stands proud, stand clear, fall open, falls open, hang open, hangs open, open up, opens up, gap open, not lie flat, will not lie flat, do not lie flat, not lying flat, not sit flat, will not sit flat, not lie on, not lying on, not touch, do not touch, not touching, not close to, not hug, away from body, away from skin, away from me, off skin, off the skin, off body, float, floats, floating, floaty, hover, hovers, hovering, daylight, lift off, lifts off, lift away, lifts away, lifted clear, bow out, bows out, pout, pouts, flap, flaps, flapping, flap open, two fingers, put my hand down, fingers under, see down, stick out from, stand out from, yawn, yawns, mouth, not sitting to body, empty space, space between, not flush, distance from body, hang away, hangs away, standing edge, not laying flat, do not lay flat, will not lay flat, loop, in air, in the air, air under, air between, up in air, not hugging, not against, unfilled gap, gapey, gapy, gaped, gapping open, gap there, gaps there, yawned, yawning, ajar, standing proud, standing clear, stood off, stood away, away from my, comes away, coming away, falls away, fell away, falling away, flares away, flare away, peels away, peel away, pulls away from skin, wings out, gutter, like a gutter, bucket, funnel, trough, cup handle, tuck a finger, slide a finger, slip a finger, put a finger, fit a finger, finger under, fingers behind, slide my hand, hand inside, hand under, fit my hand, fist, whole hand, tube, cave under, hole there, hollow space, pocket of air, breeze, draught, see through gap, not against my, not against chest, will not sit against, not sit against, do not sit against, will not stay against, sit against, not nestle, not cling, do not hug my, will not hug, not hug my, not in contact, no contact, not rest on, do not rest on, not rest against, springs away, springs off, spring off, pops away, bounces off, bounces away, billows away, balloons away, stands apart, stand apart, sticks away, sticking away, hovering off, flapping open, flapping about, flap about, flaps about, flappy, flapped, flippy, curl out, curls out, curls away, rolls outward, rolls out, gapes out, lip, lips, pouting, loose edge, edge is loose, edge loose, unsnug, not hugging me, stands off me, hang off, hangs off body, not fit close, does not fit close, tented, cupping out, bell out, bells out, trumpet, bows away, bowing, bowed out, bow away, lets air in, look down, looking down, eyeful, peer in, peer down, balcony, shelf at edge, makes a pouch, hangs like a bucket, open drawer, drop a ball, drop a coin, drop a golf ball, post a letter',
  },
  open: {
    said: 'opens',
    words:
      'open, opens, opened, opening, spread, spreads, come apart, pulls apart, pull apart, diamond, diamonds, hole between, holes between, peekaboo, window, windows, will not stay shut, will not stay closed, safety pin, openly, wide open, gapped, gapes between, pull open, pulls open, spread apart, spreads open, peephole, peepholes, peep hole, keyholes, portholes, eyelets, windows open, slits, slit open, yawn open, yawns open, diamond shape, diamond shapes, lens shaped holes, unfastening, separate, separates, separating, will not stay done up, will not stay fastened, will not stay buttoned, not stay closed, cannot keep closed, keep it shut, keep shut, keep it closed, held with pin, tape it shut, fashion tape, double sided tape, safety pins',
  },
  stickUp: {
    said: 'stands up',
    words:
      'stand up, stands up, stood up, stick up, sticks up, sticking up, poke up, pokes up, stand upright, raised, rises off, stands high, lifts up off, up in the air, pokes in the air, not lying down, will not lie down, not lie down, will not stay down, stands on end, sits up, perks up, perk up, perky, points up, pointing up, points upwards, erect edge, upstanding, upright edge, up on end, humps up, tents up, peaks up, pops up, popped up, rears up, rear up, like a tent over, ridge up, stands like, bristles, mushroom, mushrooms, loaf of bread, like a loaf, loaf, muffin, rises like, lift up in the air, elevated, roof, gable',
  },
  stickOut: {
    said: 'sticks out',
    words:
      'stick out, sticks out, sticking out, stuck out, stand out, stands out, jut, juts, jut out, jutting, poke out, pokes out, poking out, protrude, protrudes, protruding, project, projects, flare, flares, flare out, flies out, fly out, flying out, kick out, kicks out, fly away, wing out, pop out, pops out, bulge out, push out, pushes out, pushed out, shelf, projecting, juts sideways, protrudes sideways, ledge, like a ledge, shelf like, shelves, like shelves, extends out, extending out, poke sideways, pokes sideways, pop outward, outstanding edge, kicks outward, bounces out, shoots out, shoot out, sticks straight out, stick straight, flared, bell out, bells out, tutu, lampshade, lamp shade, parasol, umbrella, mushroom cap, overhang, overhangs, overhanging, holds itself out, swings out, thrust out, thrusts out, puff out to side, stand to attention, will not hang down, not hang down, will not lie against, not lie against',
  },
  wing: {
    said: 'like a wing',
    words:
      'wing, wings, winged, fin, fins, aeroplane, airplane, plane, helicopter, batman, bat, bird, butterfly, angel, flying nun, pagoda, flying, take off, fly, hen wing, bat wing, penguin, superhero, cape stands, shark fin, spaceship, space suit, epaulettes, flying saucer, about to take off, take flight, airborne, lift off, glider, hang glider, flying squirrel, manta ray, stingray, moth, dragonfly, dove, seagull, albatross, eagle, chicken wing, turkey wing, dumbo, dumbo ears, elephant ears, dracula, vampire cape, cape like, superman, supergirl, space cadet, star trek, starship, futuristic, alien, shoulder fins, wingtip, wingtips, propeller, propellers, windmill, drone, ufo, flipper, flippers, sails, sail, paddles, hovercraft, pterodactyl, flap like wings, winglike, peter pan flying, elf, pixie, ears',
  },
  fold: {
    said: 'folds',
    words:
      'fold, folds, folded, crease, creases, creasing, creased, wrinkle, wrinkles, wrinkled, wrinkly, wrinkling, line, lines, rumple, crumple, crumples, crumpled, ridge, corrugation, swag, swags, curtain, curtains, furrow, furrows, crinkle line, pleat, pleats, tuck, tucks, fold over, folding, buckle, buckles, buckling, accordion, concertina, stacks, ladder, frown line, folds over, crumpled lines, wrinkels, wrinkes, rinkles, creasy, creases up, crimps, crimp, crimped, corrugated, rumpled, rumples, ruck lines, groove in cloth, gully, furrowed, lines in fabric, lines in cloth, creased lines, laugh lines, smile lines, smile shape, frown lines, frowns, u shape, u shaped, swagged, festoon, drapery, waves of cloth, ridges, tuck of cloth, ply, closed accordion, venetian blind, blinds, roman blind, window blind, washboard, staircase, steps of cloth, ribbed, pleat of fabric, pleating, folding up, folded over, flop over, flops over, fold of skin, folds like a curtain, theatre curtain, ruckle, ruckles, cockle, cockles, bolster fold, whiskering, veins, waves lie, wave of fabric, wave of cloth',
  },
  bunch: {
    said: 'bunches up',
    words:
      'bunch, bunches, bunched, bunching, bunch up, roll, rolls, rolled, rolling, sausage of fabric, sausage, tyre, tire, lump, lumps, lumpy, heap, heaps up, pool, pools, pooling, puddle, puddles, puddling, pile, piles, piles up, ruck, rucks, rucking, rucked, scrunch, scrunches, scrunched, bulk, bulky, wad, wodge, wad of fabric, collects, collect, hammock, scarf, ridge of cloth, gathers up, thick, clump, cushion, pillow, pillows, roly poly, mound, pads, crumples up, squidge, ball up, balls up, full of fabric, excess fabric collects, rolls up, concertinas up, snake of fabric, build up, builds up, fullness, knot, knots, parcel, bundle, bunchy, bunching up, bunched up, bundles, bundled, bundling, bolster, bolsters, sausage roll, swiss roll, rolled up towel, rolled towel, towel, wodges, wedges of cloth, wads, wadded, wad up, lumped, lump of cloth, clumps, clumping, clumpy, stuffed, stuffing, stacked, stacks up, stack up, stacking, stack, telescopes, heaped, heaping, heaps, dollop, mass of cloth, gob, clot, nest, hammocks, sling, puddled, lake, pond, drift of cloth, snowdrift, snarl, tangle, crumples together, scrunchie, scrunchy, scrunching, scrunch up, bunch of cloth, bunch of fabric, fat roll, rolls of cloth, spare tyre, lifebelt, life ring, rubber ring, donut, doughnut, inner tube, bagel, croissant, rucked up, ruck up, rucks up, ruckled, rides and bunches, cloth bulk, bulkiness, bulked, thickness, padded, padding, fat fold, too full, swaddled, wadding, cloth trapped, trapped cloth, folded up, crunch, crunches, crunched, crunches up, squeezed up, pushes together, pushed together, push together, pushes up into, pushed up into, piled, piling, piling up, pleats up, collecting, collected, accumulates, accumulate, gathers into a roll, congregate, settle, settles, lodges, lodged',
  },
  pucker: {
    said: 'puckers',
    words:
      'pucker, puckers, puckered, puckering, puckery, gather, gathers, gathered, gathering, ruffle, ruffles, ruffled, ruche, ruched, crinkle, crinkles, crinkly, scallop, scallops, smocked, little tucks, tiny pleats, tiny tucks, frills, shirred, small pleats, mini pleats, puckery seam, puckers up, puckering up, pukers, pucked, puckerings, seam puckers, wrinkled seam, drawn up, draws up, ruching, frilled, frilling, cinched up, crimpy, small gathers, tiny gathers, unwanted gathers, gatherings, ruffling, tucked in bits, nips, little folds at seam, wavy seam, bumpy seam, teeth, pie crust, pie edge, pinked look, cupcake, cupcake case, muffin case, bunched stitches, tiny folds, little pleats, mini tucks, wee tucks, wee pleats, pleats in seam, tucks in seam, caught pleats, seersucker',
  },
  bubble: {
    said: 'bubbles',
    words:
      'bubble, bubbles, bubbling, dimple, dimples, pimple, blister, puff, puffs, puffy, puff up, balloon, balloons, ballon, ball, pocket, pockets, pouch, pouches, blob, nub, nubbin, bubble out, puffed, poof, poofs, pillowy, volcano, small bag, dome, bubbly, bubbled, bobble, bobbles, bobbly, puffiness, puffing, puffball, puff ball, balloons out, ballooned, balloon out, blown up, blow up, blows up, inflated, inflate, inflates, air pocket, air bubble, bag at end, wee bag, little bag, pouched, pouchy, pouching, pooch, pooches, poochy, pooched, poochie, dimpled, dimpling, pit mark, pox, pock, crater, knob, knobs, nubs, pimply, zit, wart, bead, marble, grape, egg, bulb, lightbulb, onion dome, mosque, dome shape, mound, molehill, mole hill, nipple like, wrinkle at the end, tiny nipple, little nipple',
  },
  bulge: {
    said: 'bulges',
    words:
      'bulge, bulges, bulging, bump, bumps, bumpy, swell, swells, pooches out, pouts out, hump in cloth, bulgy, bulged, bulging out, swelled, swollen, hillock, protuberance, hump in it, humps, belly out, bellies out, pot, rounded out, rounds out, ballooned out',
  },
  pointy: {
    said: 'pointed',
    words:
      'pointy, pointed, pointing out, poke, pokes, poking, pokey, poky, cone, cones, conical, cone bra, torpedo, missile, rocket, bullet bra, madonna, spike, spiky, sharp, traffic cone, headlight, headlights, ice cream cone, sharp poke, nippley, bullet, witch hat, fake nipple, extra nipple, second nipple, pointed bust, pointed boobs, pointed breast, missiles, like missiles, torpedoes, rockets, coned, conelike, funnel boobs, party hat, party hats, witches hat, pyramid, pyramids, triangle, triangles, stiletto, darts stick, dagger, pencil point, needle point, arrow, arrows, sharpness, sharply, fifties bra, vintage bra, bazooka, ice cream cones, turrets, spears, peaky, pert points, madonnas',
  },
  peak: {
    said: 'a peak or a dent in the line',
    words:
      'peak, peaks, spike at shoulder, nick, notch in line, kink, kinks, jog, jogs, angle, not smooth, is not smooth, v shaped dip, dent, dents, dip in curve, corner sticks out, bump in line, ear, step in line, sharp angle, broken line, not one curve, not a smooth curve, horn, horns, dog ear, beak, notch, beaky, beaks, notches, notched, v notch, hook at top, crook in line, hitch in curve, hiccup, blip, cusp, cusps, dogleg, dog leg, corner in curve, sharp corner, cornered, pointed corner, angular, not round, not a round line, is not a nice round, not a nice curve, not a clean curve, not flowing, not flow, do not flow, uneven curve, jagged, crooked curve, bite out of it, chunk, dipped, dented, dint, elf ear, cat ear, cat ears, devil horn, tooth, snag in curve, mismatch, mismatched edges, mismatched curve, lines do not meet, not meet smoothly, do not meet smoothly, not run together, do not run together, do not continue, does not continue smoothly, scooped dip, scooped, elf ears',
  },
  wavy: {
    said: 'wavy',
    words:
      'wavy, ripple, ripples, rippled, rippling, ripply, flute, flutes, fluted, lettuce, lettuce edge, frilly, frill, undulate, undulates, undulating, ruffly, potato crisp, crisp, wobbly, seaweed, not lie smooth, stretched out, stretched out of shape, sea waves, wavey, waves at hem, waviness, ruffles itself, frills itself, frilling up, ruffling edge, flounce, flounces, flouncy, fluttery, flutters, corrugates, curly, curls, curl, curling, crinkled edge, scalloped, scallopy, snaking edge, sea weed, kale, cabbage, cabbage leaf, jellyfish, ribbon, noodle, lasagne, lasagna, wibbly, wibble, wibbly wobbly, rippley, bumpy edge, warped, warps, stretched edge, grown longer, longer in spots, dropped in places, growing, stretched in places, stretched longer, waves',
  },
  sCurve: {
    said: 'bends in a curve',
    words:
      's curve, s shaped, letter s, an s, like an s, curve, curves, curved, curvy, bow, bows, bowed, snake, snakes, snaky, zigzag, zig zag, wiggly, wiggle, wiggles, meander, bend, bends forward, bent line, arch, arches, arched, wavers, squiggly, squiggle, wander, wanders, serpentine, parenthesis, bracket, banana, curves about, s bend, s bends, bendy, bending line, bends like, kinked line, curvature, curved like, question mark, road, winding road, river, meanders, waves in and out, wiggling, does a wiggle, weave, weaves, weaving, wavering, deviates, in and out, bow shaped, bends, bendy line, bending seam, bowing, arcs, arc, sinuous, twisty line, swerves, not a straight line, is not a straight line',
  },
  sag: {
    said: 'sags',
    words:
      'sag, sags, sagging, droop, droops, drooping, droopy, slump, slumps, drop, drops, dropped, dropping, hang down, hangs down, hang low, hangs low, dip, dips, dipping, dipped, fall down, falls down, sink, sinks, sunk, flags, slouch, slouches, go down, goes down, sags down, sagged, saggs, sagginess, slumping, slumped, drooped, droops down, drop down, slumps down, flops down, falls too low, lower than it should, comes down too far, plunge, plunges, plunging, plunge down, plummets, downhill, tips downhill, sloped down, descends, descend, descending, pulled down, weighed down, weighs down, hang too low, sinks down, dropping down, lies low, too far down, lowers, lowering, drips, limply, tip down, tips down, slant down, slants down, slopes down',
  },
  hang: {
    said: 'hangs',
    words:
      'hang, hangs, hanging, drape, drapes, draping, dangle, hanged, hangs there, dangles, dangling, hangs like, hangs away, suspend, suspended',
  },
  rise: {
    said: 'rides up',
    words:
      'ride up, rides up, riding up, rode up, hike, hikes, hike up, hikes up, climb, climbs, climbing, creep up, creeps up, creeping up, rise, rises, rising, rose, lift, lifts, lifting, lifted, lift up, kick up, kicks up, hitch up, hitches up, hitched, hitched up, go up, goes up, going up, come up, comes up, coming up, jump up, jumps up, hoist, hoists, pull up, pulls up, pulled up, pulling up, dragged up, untuck, untucks, crawl up, crawls up, ride, rides, riding, work up, works its way up, tip up, tips up, swing up, raise, push up, pushes up, flip up, flips up, shoot up, shoots up, inch up, bob up, crop top, moves up, hauls up, popping up, slide up, slides up, hop up, rising up, arch up, arches up, arching up, arching, climb up, climbs up, climbing up, scoots up, scoot up, scoots, scooches, scooch, shimmies up, shimmy up, wriggles up, wiggle up, wiggles up, works up, work its way up, works itself up, travels up, travel up, move up, inches up, edges up, springs up, bounce up, bounces up, spring up, pops up, flies up, fly up, flips, flick up, flicks up, cocks up, cock up, curls up, curl up, tilts upward, tilts up, tips upward, tip upward, tilted up, arched, hoicks up, hoick, hoicked, hitching, hitching up, yanked up, yanks up, hoisted, elevates, heighten, heaved up, draws upward, drawn up, goes north, heads north, heads up, uphill, shortens, gets shorter, shorter when, pulls out of my skirt, pulls out of waistband, come untucked, comes untucked, untucked, untucking, comes out of my skirt, comes out of trousers, shows my midriff, midriff shows, midriff bare, bare midriff, belly shows, tummy shows, shows my stomach, bare stomach, flashes my belly, rode, risen up, pushed up, pushing up, shoved up, shove up, shirt up, hem up, scrunch up, up it goes, skirt up, skirts up, lifted off',
  },
  slide: {
    said: 'slides',
    words:
      'slide, slides, sliding, slid, slip, slips, slipping, slippery, shift, shifts, migrate, migrates, move, moves, travel, travels, travelled, drift, drifts, creep, creeps, creeping, work its way, wander off, fall off, falls off, falling off, will not stay up, will not stay on, keep falling, slide off, slip off, tips over, tip over, fall, falls, falling, lunge, lunges, topples, slithers, slither, slithering, slidey, slippy, glide, glides, scoots back, creeps round, crept, crawling, crawl, crawls, sneak, sneaks, migrating, migrated, wander, wandering, moving, moved, shifted, shifting, displaced, relocates, works its way down, worked its way, worked its way down, march, marches, marching, lurch, lurches, pitch forward, pitches, pitching, topple, toppling, fall off me, fallen, tumbling, sliding off, slips down, slip down, slides down, come off, comes off, coming off, pull it back, pulling it back, tug it back, hitch it back, readjust, adjusting, adjust, straighten it, forever tugging, constantly tugging, keep tugging, keep pulling, forever pulling, keep yanking, weight pulls, weighs it down, weight of back, wants to fall, tips forward, tip forward, tipping forward, tips to front',
  },
  swing: {
    said: 'swings',
    words:
      'swing, swings, swinging, veer, veers, run, runs, running, sway, sways, thrown, pendulum, swerve, goes off, stray, go, goes, move toward, shoots, pulled toward, heads, swings round, swung, marching forward, angles, angling, angle off, heads for, head for, heading, heading for, aims for, drifts off, wanders toward, dragged toward, being dragged, pulled behind, swinging round, comes round, curve toward, curves toward, lean toward, points toward, angles to, veers off, veering, migrates toward, travels toward',
  },
  tilt: {
    said: 'tilts',
    words:
      'tilt, tilts, tilted, tilting, slope, slopes, sloping, slant, lean, leans, leaning, list, not plumb, out of plumb, incline, tip down, canted, cant, cants, out of true, off plumb, off vertical, not vertical, is not vertical, not upright, off kilter, sloped, sloping line, slanted line, pitched forward, pitched back, slanting line, gradient, hill, ramp, skewed down, askance, not hanging plumb, instead of hanging plumb, tips, tips down, tipped, tips up',
  },
  twist: {
    said: 'twists',
    words:
      'twist, twists, twisted, twisting, spiral, spirals, spiralling, corkscrew, corkscrews, rotate, rotates, rotating, rotation, turn, turns, turning, turned, wind, winds, skew, skewed, screw, screws, barber pole, wrap, wraps round, swivel, swivels, pitch, pitched, wring, wrung, off pitch, off grain, grain, grainline, grain line, warp thread, selvedge, selvage, bias, twisting round, twirl, twirls, twirled, swirls, swirl, swirling, winding, wound, winding round, wrung out, wringing, candy cane, helix, coil, coils, coiled, vine, ivy, rope twist, plait, screw thread, spiralled, revolve, revolves, revolving, rotated, swivelled, turned round, creeps round, works round, moves round, travels round, goes round, comes round, swings round, wraps around, wrap around, wrapping, contorted, contort, torqued, torque, tornado, washing wrung, off the grain, against grain, wrong grain, crooked grain, threads slanted, threads slant, weft, warped threads, not on grain, thread line, wonky grain, on cross, on the cross, cut on cross, cross grain, crossgrain',
  },
  uneven: {
    said: 'uneven',
    words:
      'uneven, unevenly, crooked, crookedly, wonky, unlevel, not level, is not level, not horizontal, not parallel, squint, lopsided, lop sided, asymmetric, asymmetrical, asymmetry, not straight, is not straight, skew whiff, skewwhiff, askew, unequal, not equal, not same, not the same, do not match, mismatched, irregular, out of balance, unbalanced, is not balanced, not balanced, cockeyed, all over place, squinty, on the huh, cack, skwee, wonkier, is not even, not even, higgledy, out of level, off level, unsymmetrical, different heights, different lengths, unevenness, unequally, unequal heights, irregularly, wobbly hem, wavy hem, staggered, higgledy piggledy, all over the shop, up and down hem, drunk, drunken, drunkenly, crooked hem, cock eyed, skewiff, skewwiff, wonkily, wonk, skwint, agee, cattywampus, catawampus, cattiwampus, kattywampus, off kilter, not matching, do not match up, not aligned, do not line up evenly, different length, varies, vary, varying, higher than other, lower than other, not evenly, more on one side, more one side, heavier one side, lopsidedly, not parallel to floor, not parallel to ground, are not parallel, is not parallel, unparallel, not level with floor, not same length, not the same length, not same distance, not equal all round, out of line, one side longer, one side higher, longer one side, higher one side, off balance, imbalance, imbalanced, disproportionate, not symmetrical, unsymmetric, nonsymmetrical, asymetrical, assymetrical, assymetric, wonkey',
  },
  choke: {
    said: 'chokes',
    words:
      'choke, chokes, choking, chocking, chokey, choked, strangle, strangles, strangling, strangled, throttle, throttled, throttling, gag, gags, gagging, suffocates, noose, swallow, asphyxiate, garrotte, chokehold, can not swallow, dog collar, choky, throttles me, strangulation, strangler, gagged, asphyxiating, hard to swallow, swallowing, guillotine, guillotined, leash, dog lead, choker, choke chain, tight collar, gasping, gasp, suffocating, suffocated, garroted, garrotted, throttle me',
  },
  show: {
    said: 'shows what should be covered',
    words:
      'show, shows, showing, see, seen, sees, visible, peep, peeps, peeping, peek, peeks, display, on display, on show, flash, flashes, flashing, expose, exposes, exposed, reveal, reveals, look in, look into, see in, see into, see inside, see up, view, flaunt, indecent, shows off, showed, visibly, in view, view of, a view, eyeful, peering, peer, glimpse, glimpses, revealing, revealed, exposing, exposure, flasher, flashed, bare, bared, bares, baring, uncovered, uncover, uncovers, nothing to imagine, on parade, indecently, x rated, immodest, not modest, modesty, naked, nude, nudity, undressed, look up my, look up, look through, stare, stares, staring, looks in, looks inside, seeing, viewable, spy, noticeable, peeks out, peeking out, peeked, poke out straps, wardrobe malfunction, everyone sees, everybody sees, people see, strangers see, can be seen, is seen, sees in, plain sight, show off',
  },
  empty: {
    said: 'stands empty',
    words:
      'empty, hollow, hollows, cave, caves in, cave in, caving, collapse, collapses, collapsed, collapsing, sunken, concave, deflated, deflate, nothing to fill, not fill, not filling, do not fill, not filled, unfilled, nothing in it, caved, flattened balloon, dented in, falls in, vacant, emptiness, empties, hollowed, hollowing, cavernous cup, unoccupied, flop in, flops in, buckles in, buckle in, folds in on itself, sinks in, sink in, sinks inward, inward dent, dents in, dented, crushed in, pushes in when, puckers inward, deflates, deflating, flat tyre, punctured, like a burst balloon, burst balloon, wilted, wilts, wilt, limp balloon, crumples in, sunk in, implodes, implode, nobody home, nothing inside, nothing there, no filling, unstuffed, needs filling, stuffed with tissue, chicken fillets, padding needed, without filling, not enough to fill, can not fill, do not fill it out, fill it out, fills it, filling out',
  },
  flat: {
    said: 'flat',
    words:
      'flat, flatten, flattens, flattened, uniboob, monoboob, minimised, flat as a pancake, pancake, shallow, flattening, flatter, mashes me flat, ironing board flat, squashed flat, plank, board, one boob, mono boob, single boob, sausage boob, shelf boob, flatness, flattish, low profile, not tall enough, not tall',
  },
  long: {
    said: 'too long',
    words:
      'long, length, lengthy, too much length, extra length, excess length, overlong, too many length, longish, lengthwise too much, lengthwise cloth, too much cloth lengthwise, lengthways excess, too much down, tall, too tall, taller, longer than it should, excess height, surplus length, surplus height, too much height, extended, lengthier, over long, a mile too long, length to spare, lots of length, length in it, needs shortening, should be shortened, shorten it, stretched down, goes on forever',
  },
  short: {
    said: 'too short',
    words:
      'short, shorten, shortened, cropped, not long enough, length less, not enough length, brief, will not reach, do not reach, not reach, do not come down, stops short, short of, shortest, shortish, curtailed, stunted, stubby, truncated, cut off, needs lengthening, needs more length, more length, lengthened, lengthen, add length, wants length, want of length, lack of length, lacks length, lacking length, missing length, skimpy length, stops above, comes up short, not down far enough, not low enough, length is not enough, length not sufficient, insufficient length, too little length, not cover, do not cover, does not cover, shy, a inch short, half an inch short, not enough height, lacks height, lacking height, needs height, needs more height, isnt tall enough, is not tall enough',
  },
  high: {
    said: 'too high',
    words:
      'high, too high, highest, up high, higher up, highly, too far up, up too far, up too high, uppermost, way up, way above, way over, height too high, over and above, sits high, rides high, lies above, lies too high, needs dropping, should be lower, drop it',
  },
  low: {
    said: 'too low',
    words:
      'low, too low, lowest, deep, too deep, too far down, far down, low down, lowly, lower down, lowish, way below, way under, well under, well below, beneath where, too far below, nearer my waist, closer to my waist, closer to waist, near my waist, down by waist, sits low, sits too low, lies low, lies below, lies too low, hits too low, hits low, down round, down at, downmost, needs raising, should be raised, raise it, dug too deep, cut too deep, deeply cut, cut low, cut down',
  },
  past: {
    said: 'runs past',
    words:
      'past, beyond, too far, overshoot, overshoots, overrun, goes over, run over, runs over, ran over, not stop, should stop, should end, stop sooner, end sooner, carry on, carries on, carried on, carry beyond, continue, continues, keeps going, go on past, over the hill, over the top, over top of, runs on, run on, on over, on top of nipple, onto nipple, end right on, ends right on, end on nipple, ends on nipple, ends at nipple, reach past, reaches past, reaches over, too far over, other side of, crossing over, cross over, longer than bust, overshooting, overshot, overruns, extends past, extend past, extends beyond, extend beyond, exceeds, further on, ends after, ends behind, ends too late, stops too late, should have stopped, ought to stop, not end in time',
  },
  misses: {
    said: 'misses its place',
    words:
      'miss, misses, missing, wrong place, wrong spot, not lined up, not line up, do not line up, misaligned, misplaced, aim, aims, aiming, point to, points to, pointing, wrong height, off target, look inside, look outward, cross eyed, wall eyed, wonk eyed, missed, misses by, aimed, targeted, target, land, lands, landing, landed, lands somewhere, hit, hits, hitting, wrong direction, wrong way, wrong level, wrong point, not pointing, do not point, not point, not point at, do not point at, not aimed, not aim, not directed, directed, direct, off centre, off to the side, beside the point, nowhere near, not in right place, not in the right place, wrong position, positioned, placed wrong, placement, placed, out of place, located, location, rather than pointing, instead of pointing, rather than at, instead of at, rather than my, end up, ends up, point at, points at, pointed at, not at my',
  },
  catches: {
    said: 'catches',
    words:
      'catch, catches, catching, stuck, sticks on, stick on, gets stuck, get stuck, snag, snags, hang up on, hangs up on, not slide down, will not go down, will not slide down, not go down, will not pull down, will not go over, not come down, catch on, hung up, get hung up, hooks on, hooked on, gets caught, get caught, caught on, jams on, jam on, wont slide down, will not slip down, stuck at, stuck on, stuck above, not pass, will not pass, do not pass, does not slide, not go past, will not go past, not go over, can not pull down, can not pull it down, can not get it over, can not get it past, fight it down, peel it over, wriggle it over, shimmy it over, drag it over, tug it down, pull it down, have to pull down, keep pulling it down, keeps coming up, hip stops it, shelf at hip',
  },
  ease: {
    said: 'to be eased in',
    words:
      'ease, eased, easing, ease in, too much to ease, too much ease, set in, setting in, set sleeve in, sew sleeve in, sewing sleeve in, fit in the armhole, fit into armhole, go into armhole, fit sleeve into, insert, inserting, set the sleeve, easing in, ease it in, ease stitch, ease stitches, ease stitching, gathering stitch, gathering thread, baste, basting, basted, pinning sleeve in, pin sleeve in, sleeve insertion, put in sleeve, putting sleeve in, attach sleeve, attaching sleeve, joining sleeve, join sleeve, sewed in, sewn in, more fabric than armhole, more fabric than the armhole, bigger than armhole, bigger than the armhole, longer than armhole, longer than the armhole, larger than armhole, larger than the armhole, more cloth than armhole, excess ease, overeased, shrink out, shrink in ease, too much fullness, fullness in cap, fullness at cap, fullness',
  },
  angleFlat: {
    said: 'horizontal in the air',
    words:
      'straight out, sideways out, out sideways, horizontally out, out to the side, parallel to floor',
  },
  cannot: {
    said: 'cannot',
    words:
      'can not, cannot, unable, impossible, will not, will not let, hard to, hardly, barely, difficult, struggle, stop me, stops me, prevents, hinders, limits, limited, no mobility, impossible to, not able, no movement, hampers, no way, never, not possible, incapable, fails, refuses, refuse, refusing, blocked, block, blocks, limits me, limiting, obstruct, hamper, hampered, restrains, restrained, restraint, mobility, range of motion, range of movement, movement is restricted, freedom, immobile, immobilised, paralysed, paralyzed, glued, robotic, scarecrow, tied down, handcuffed, held back, held down, only half way, only halfway, not fully, not all the way, difficulty, hard time, painful to, tough to, have trouble, trouble lifting, trouble reaching',
  },
  more: {
    said: 'more is needed',
    words:
      'more, another, additional, further inch, add, adding, extra inch, extra centimetre, want more, needs more, need more, let out, letting out, let it out',
  },
  smooth: { said: 'smooth', words: 'smooth, neat' },
  new: {
    said: 'different now',
    words:
      'differently, changed, change, worse, now, no longer, not any more, anymore, after washing, behave, behaves, changed since, altered, altered since, turned out different, different result, other result, not same as, not the same as, no longer fits, not fit like, do not fit like, worse than, another story, different story, disaster, ruined, spoiled, gone wrong, went wrong, something changed, not behave, behaves differently, hangs differently, drapes differently, fits differently, fitted before, before it was, since i made, since washing, since sewing, is different, hangs different, different in',
  },
  stiff: {
    said: 'stiff',
    words:
      'stiff, crisp cloth, rigid, not drape, will not drape, do not drape, cardboard, stiffly, starchy, starched, paper like, papery, too crisp, crispy, board like, boardy, hard fabric, heavy interfacing',
  },
  soft: { said: 'soft', words: 'soft, softly, gentle' },
} satisfies Sayings
