/** Directions, sides, movements and the words that relate one place to another. */
import type { Sayings } from '../concept.ts'

export const DIRECTIONS = {
  across: {
    said: 'level, across',
    words:
      'across, horizontal, horizontally, crosswise, crossways, cross, sideways, side to side, from side to side, left to right, straight across, going across, widthwise, widthways, level fold, level, transverse, athwart, east to west, horizontals, horizontaly, horizantal, horizontle, orizontal, transversal, transversally, breadthwise, crosswards, laterally, lateral, from left to right, left right, across ways, from one side to other, one side to other, side by side direction, parallel to hem, parallel to floor fold, parallel to waist, equator, belt like, like a belt, from armhole to armhole, going sideways, sidewise, along width, in width direction, wide ways, flat line, straight over',
  },
  upright: {
    said: 'upright',
    words:
      'vertical, vertically, lengthwise, lengthways, up and down, up down, upright, perpendicular, from up to down, top to bottom fold, longitudinal, north to south, straight down, long folds, running down, vertically running, verticals, verticle, vertikal, top down, from top to bottom, downward fold, up to down, from shoulder to hem, from above to below, hanging straight down, hanging down fold, hangs straight down, long wise, along length, in length direction, parallel to centre front, parallel to cf, parallel to arm, columns, column, pillar, pillars, organ pipes, organ pipe, like organ pipes, pipes, stalactites, rain, standing fold, straight fold down, plumb fold, lengthwise wrinkle, length wise, up down folds',
  },
  slant: {
    said: 'slantwise',
    words:
      'diagonal, diagonally, diagonals, slantwise, slanting, slanted, slant, oblique, obliquely, at an angle, angled, v shape, v shaped, upside down v, bias line, crossing down, catty corner, kitty corner, like a v, radiating, radiate, radial, fan, fan out, starburst, sunburst, diag, diagnal, diagonaly, dyagonal, slants, slantways, slant ways, slope lines, aslant, inclined, on a slant, at a slant, askew lines, sideways down, crossing diagonally, corner to corner, tilted lines, tilted folds, like arrows, arrow shaped, chevron, chevrons, herringbone, inverted v, a v, like v, v folds, fanning, fanning out, fans out, fanned, shoot out, shoots out, shooting out, spread out from, spreading from, star pattern, rays from, from corner, oblique line, forty five degrees, x shape, like an x, criss cross',
  },
  allRound: {
    said: 'all round',
    words:
      'all round, all around, right round, right around, all the way round, all the way around, round and round, front and back, front side and back, everywhere around, on every side, full circle, way round, way around, the whole way round, front and back alike, back and front, all the round, round about, circumferential, circle, circumference, right the way round, whole way around, entire circumference, ring, in a ring, belt of folds, front back and sides, front sides and back, both front and back, in front and back, in front and behind, back and front alike, front as well as back, everywhere round, equally all round, evenly all round, same all round, everywhere at waist level, the full way round, around entire, completely round, completely around, whole circumference, front side and back alike',
  },
  forward: {
    said: 'forward',
    words:
      'forward, to front, toward front, front ward, toward my front, forwards, foward, forwards of, to the front, frontwards, forwardly, ahead, frontward, front wards, to my front, toward the front, in forward direction, onward, to fore, to the fore, in front of me, forwads, forword, towards my chest, toward my chest, to my chest, toward knees, toward toes, toward my knees, frontways, forward facing, comes front',
  },
  backward: {
    said: 'backward',
    words:
      'backward, to back, toward back, to the back, rearward, backwards, to behind, to rear, off to back, to my back, to the rear, towards back, to behind me, behind me, rear ward, down my back, backways, back ward, backwardly, retreat, retreats, reverse, in reverse, aft, towards my back, toward my back, toward rear, to my rear, onto my back, on to my back, off my back, goes back, slipped back, slid back, gone back, shoved back, pushed back, pulled back, toward backside, toward my backside, toward my bum, toward my bottom, toward bottom of me',
  },
  up: { said: 'up', words: 'up, upstairs' },
  down: { said: 'down', words: 'down, doon' },
  outward: {
    said: 'outward',
    words:
      'out, outward, outwards, outer, outside, further out, far out, to side, to sides, out to sides, toward side, off to side, away from centre, toward armpit, sidewards, outboard, externally, away from middle, off the edge, past edge, to outside, to the outside, to the sides, toward sides, toward my arms, toward arms, to my armpits, toward my armpits, toward armpits',
  },
  inward: {
    said: 'inward',
    words:
      'inward, inwards, inside, inner, to middle, in to middle, toward middle, to centre, toward centre, in the middle, further in, far in, inwardly, toward sternum, toward my sternum, toward breastbone, toward my breastbone, toward each other, to inside, to the inside, medially, toward neck, toward my neck, to neck, centrally, toward button, toward buttons, to middle of chest, converge, toward cleavage, at cleavage, at my cleavage',
  },
} satisfies Sayings

export const SIDES = {
  oneSide: {
    said: 'on one side',
    words:
      'one side, one shoulder, left, right side, right shoulder, right one, my right, left side, only one, one only, left only, right only, one arm, other side, other one, on one, the other, single side, one half, than the other, than other, different from other, right hand side, left hand side, right half, left half, rh side, lh side, one of them, just one, just left, just right, single, one is lower, one is higher, on left, on right, one side only, one sided, onesided, only left, only right, one arm only, right arm, left arm, left shoulder, one of my, my left, dominant side, bag side',
  },
  bothSides: {
    said: 'on both sides',
    words:
      'both sides, both, each, each side, either side, left and right, two sides, left and right alike, each of, both the, left as right, equally left and right, symmetrically, both of them, on both, on each, either, the pair, left right both',
  },
} satisfies Sayings

export const MOVEMENTS = {
  reach: {
    said: 'when reaching forward',
    words:
      'reach, reaches, reaching, reach forward, stretch forward, reach out, hug, hugs, hugging, embrace, cuddle, drive, driving, steering wheel, steering, wheel, type, typing, keyboard, push pram, push chair, pushing, fold my arms, cross my arms, arms crossed, arms forward, arm forward, bring arms forward, arms in front, arms together, lean over desk, bike, cycling, cycle, bicycle, handlebars, hold my baby, carry child, pick up, pick something up, clap, play piano, move arms forward, arms come forward, bend forward with arms, reaching out, reached, leaning over handlebars, lean over, reach across, reaches across, reaching for, reach for salt, reach for, reach to front, extend arms, extend my arms, extending arms, outstretch, outstretched, stretch out arms, hold arms out, holding arms out, hold out my arms, arms out in front, arms ahead, hands together, hold hands in front, clasp hands, knitting, sewing machine, at machine, writing, write, computer, at computer, desk, at my desk, shopping trolley, trolley, pram, buggy, stroller, handlebar, scooter, motorbike, lawn mower, mow, vacuum, hoover, hoovering, sweeping, mopping, washing up, dishes, cooking, stir, stirring, kneading, knead, guitar, violin, cello, piano, drums, canoe, kayak, swim stroke, tie my shoes, tie shoes, tie my laces, putting shoes on, touch my toes, bear hug, cuddling, hugged, embracing, rock baby, nurse, nursing, hold child, hold my child, lifting child, lift my toddler, toddler, carry shopping, carry bags, open door, push door, bring my elbows together, elbows together, elbows forward, cross arms, folding arms, fold arms, folded arms, hands on knees, hands in lap',
  },
  armsUp: {
    said: 'when lifting the arms',
    words:
      'lift arm, lift my arm, lift arms, lifting arm, lifting arms, arm lifted, arms lifted, raise arm, raise arms, raise my arm, raising arm, raise hand, raise my hand, raise hands, lift hand, hand lifted, hand not lifting, arm up, arms up, hands up, hand up, put arm up, put my arms up, put hand up, overhead, over head, over my head, above head, top shelf, high shelf, waving, wave hand, do my hair, ceiling, bus strap, hang washing, hanging washing, hang out washing, washing line, reach up, reach high, arms go up, arm go up, reach the shelf, stretch up, arm raised, arms raised, arms in air, hands in air, hands in the air, hail a taxi, hailing, volleyball, yoga, upward reach, lift my hands, lift up my arm, lift them, no lift, arm will not go up, arm not go up, arms pinned, comb my hair, brush my hair, tie my hair, hold rail, arm lift, shampoo, cupboard, cabinet, upstretched, raised arm, reaching up, t rex, reach for shelf, throw a ball, basketball, reach top, change a lightbulb, light bulb, curtain hanging, with arm up, arms overhead, above my head, arm above, arms above, high five, raise your hand, hands over head, hand over head, put hands up, hold up, hold up arms, holds up, lift both arms, lifting my arms, lifting my arm, lifts arm, lifts her arm, lifting hand, hand lift, arms raise, arm raise, arms upward, arm upward, hands upward, arm goes up, arms equals up, hand goes up, reach top shelf, put plate away, put plates away, putting dishes away, plate on top shelf, on top shelf, put on top shelf, highest shelf, hang curtains, hanging curtains, hang a picture, paint ceiling, painting ceiling, wash hair, washing my hair, dry my hair, blow dry, put hair up, put my hair up, ponytail, tie hair, hat on, put hat on, pull jumper off, conduct, conducting, conductor, orchestra, stop a bus, hail cab, cheer, cheering, praise, praising, worship, church hands, ymca, jumping jacks, star jump, star jumps, swing on, climb a ladder, pull ups, hanging on, hang on to strap, strap on bus, strap on tram, strap hanger, tube strap, hold the bus strap, holding the bus strap, grab rail, grab handle, overhead bin, overhead locker, luggage rack, pick apples, picking apples, picking fruit, reach for stars, stretch to sky, stretch skyward, salute, saluting, lasso, serve in tennis, tennis, netball, shoot hoops, goalkeeper, ballet arms, ballroom, zumba, aerobics, exercise, wave goodbye, waving hello, wave my arms, wave my hand, arms in sky, hands to sky, upraised, arms at shoulder height, arms out sideways, arms out to sides, lift arm sideways, raise sideways, arms to sides, ninety degrees, arm to ninety, raise arm to, when i wave, i wave, throw ball, at dance class, dance class, salsa dancing, when i dance, when dancing',
  },
  bendElbow: {
    said: 'when the elbow bends',
    words:
      'bend arm, bend my arm, bending arm, bent arm, bend elbow, bend my elbow, elbow bends, arm bent, bending elbow, drink, drinking, eat with, phone, text, texting, fork, touch my ear, touching my ear, cup to mouth, arm bends, flex, bend it, telephone, brush my teeth, toothbrush, lift a cup, bottle, scratch my nose, hand to mouth, hand to my mouth, spoon, makeup, flexing, bending my arm, bending my elbow, bends at elbow, bend at the elbow, arm is bent, elbow is bent, fold my arm, fold my elbow, folding elbow, bring hand to face, hand to face, hand to chin, hands to face, coffee, tea cup, mug, lift mug, lift my coffee, glass, drinks, sip, sipping, eats, fork to mouth, brushing teeth, brush teeth, scratch nose, scratch head, phone to ear, on the phone, phone call, answer phone, take a call, holding phone, hold my phone, selfie, selfies, lipstick, mascara, shave, put on makeup, put on glasses, adjust my glasses, glasses, touch my face, touch nose, touch shoulder, touch my shoulder, crook my arm, curl a dumbbell, bicep curl, arm wrestle, lean on elbows, lean on my elbows, elbows on table, elbow on table, bent elbows, bended, eat, eating',
  },
  sit: {
    said: 'when sitting',
    words:
      'sitting, sit down, seated, chair, driving seat, sits down, sitting down, when seated, desk chair, couch, sofa, car seat, sat down, take a seat, in a chair, in car, siting, when i sit, as i sit, i sit, whenever i sit, while sitting, sit table, sit desk, to sit, sit up, sit in, sit back, on a chair, sit straight',
  },
  bendOver: {
    said: 'when bending over',
    words:
      'bend over, bending over, lean forward, lean over, leaning forward, bend down, stoop down, bending down, pick up from floor, bend forward, bending forward, bent over, bends over, bend to, tie my shoes, tie shoes, shoelaces, pick something off floor, pick up toddler, stooping over, gardening, weeding, crouch, crouching, duck down, leans over, leaning over, tie my kid shoes, tie laces, lean in, leaned over, bow down',
  },
  walk: {
    said: 'when walking',
    words:
      'walk, walking, walks, step, stride, walked, stroll, strolling, run for bus, going upstairs, climb stairs, stairs, each step, hike a trail, move about',
  },
  breathe: {
    said: 'when breathing',
    words:
      'breathe, breath, breathing, deep breath, inhale, breathes, breathing in, breathe deeply, deep breaths, breathless, sigh, inhaling, exhale, lungs, lungful',
  },
  armsDown: {
    said: 'with the arms hanging',
    words:
      'arms down, arm down, arm hangs, arms hang, arm hanging, arms hanging, at rest, arms at sides, arms at my sides, arm at rest, hanging arm, when arm is down, arms relaxed, arms are down, put my arms down, standing still, arm is down, arms rest, lower my arms, lower arms, lower them, arms lowered, arm lowered, with my arm down, with arm down, hanging at side, hanging by my side, by my side, by my sides, arms beside body, arms straight down, hands down, hands at my sides, drop my arms, dropped arms, hang naturally, naturally hanging, resting, relaxed, arms hang down, arm is hanging, arm just hangs, stand normally, standing normally, when i just stand, just standing, arms at side, when arm is hanging',
  },
  shoulderBack: {
    said: 'with the arms drawn back',
    words:
      'arms back, put my arms back, pull shoulders back, shoulders back, arms going back, hands behind, throw shoulders back, stretch arms back, arms behind me, throw my shoulders back, pull my shoulders back, pulling shoulders back, shoulders pulled back, chest out, puff out chest, puff my chest, arms behind back, hands behind back, hands behind my back, stretch backward, open my chest, open chest, pull arms back, draw shoulders back, reach behind, reach backward, clasp hands behind, put coat on, putting on coat, do up my bra, good posture pose',
  },
  meal: {
    said: 'after a meal',
    words:
      'lunch, dinner, meal, after eating, after i eat, eaten, full stomach, supper, tea time, after food, big meal, after meals, christmas dinner, sunday lunch, thanksgiving, pizza, breakfast, ate, bloat, bloating, dine, dining, i eat, when i eat',
  },
  hung: {
    said: 'after hanging',
    words:
      'overnight, after hanging, hung for a day, hanging up for a day, left on hanger, on the hanger, hanger, hung up, hanging up, on hanger, since it hung, let hang, let it hang, left to hang, hang a day, hanging for a day, left hanging, hang overnight, hung overnight, dressform',
  },
  washed: {
    said: 'after washing',
    words:
      'wash, washed, washing machine, in wash, laundry, laundered, tumble, after first wash, first wash, in laundry, in the laundry, hot wash, dryer, tumble dryer, tumble dried, soaked, after the wash, washing it, prewash, prewashed, dry cleaned, steamed',
  },
  wornOn: {
    said: 'while it is worn',
    words:
      'all day, keep, keeps, constantly, always, by lunchtime, every minute, during day, all the time, continually, again and again, every few minutes, through day, throughout day, by evening, by end of day, end of day, by noon, after an hour, after ten minutes, minutes, hourly, ever again, every five minutes, forever, nonstop, non stop, constant, repeatedly, over and over, every time, during the day, keeps on, all time, never stays, will not stay',
  },
} satisfies Sayings

export const RELATIONS = {
  from: {
    said: 'from',
    words: 'from, starting at, starts at, start at, begins at, start, starts',
  },
  toPlace: {
    said: 'towards',
    words: 'to, toward, up to, down to, aims at, ending at, as far as',
  },
  above: {
    said: 'above',
    words: 'above, over top of, on top of, atop, at top of, very top',
  },
  below: {
    said: 'below',
    words:
      'below, under, underneath, beneath, right under, just under, directly under, immediately below',
  },
  than: {
    said: 'than',
    words: 'than, compared to, compared with, versus, as opposed to, rather than, instead of',
  },
  between: {
    said: 'between',
    words:
      'between, in between, from scye to scye, from armhole to armhole, from arm to arm, armhole to armhole, arm to arm, scye to scye, armpit to armpit, from one armhole to other, from one arm to other, sandwiched, in middle of, among',
  },
  beside: {
    said: 'beside',
    words:
      'beside, next to, near, by, close by, alongside, along, around, at either side of, nearby, adjacent',
  },
  over: { said: 'over', words: 'over, on' },
  behindOf: {
    said: 'behind',
    words:
      'behind shoulder, behind the bone, behind my shoulder, behind bone, back of shoulder, behind top of shoulder, behind top of arm, behind my arm, behind arm, behind both arms, back of bone, lands behind, falls behind, sits behind, lies behind, back of my shoulder, rear of shoulder, at rear of shoulder, rear of arm, back of arm, back of my arm, behind each arm',
  },
  aheadOf: {
    said: 'in front of',
    words:
      'in front of, ahead of, in front of bone, in front of shoulder, in front of arm, front of shoulder, front of arm, front of armpit, front of my armpit, front armpit, in front of armpit, fore of, front of my shoulder, in front of my shoulder, in front of my arm, forward of, ahead of bone, before bone, front of my arm, in front of each arm, forward of bone',
  },
  want: {
    said: 'should be',
    words:
      'need, needs, needed, needing, want, wants, wanting, should, should be, must, must be, wish, supposed, ought, would like, had to be, wishes, wanted, wished, hope, hoping, requires, require, required, could do with, would need, prefer, i would like, id like, would love, meant to, is meant, are meant, expected, intended, has to be, have to be, rather it, ought to be, need to be, needs to',
  },
  fine: {
    said: 'is right',
    words:
      'fine, perfect, perfectly, ok, okay, good, great, correct, fits well, fits, fit, fitted, sound, all right, alright, nice, lovely, ideal, spot on, dead on, bang on, beautiful, beautifully, gorgeous, well fitting, fits like a glove, like a glove, glove, just right, no problem, not a problem, no issue, no issues, no problems, happy with, brilliant, splendid, excellent, smooth there, well, no trouble, where should be, where they should be, where it should be, as it should be, as should be, acceptable, grand, braw, tidy, where it belongs, in right place, in the right place, perfect there, not bad',
  },
  borrowed: {
    said: 'like another one’s clothes',
    words:
      'borrowed, dad, dads, husband, boyfriend, someone else, father, brother, someone bigger, linebacker, american football, hand me down, big brother, footballer, mum clothes, mothers clothes, bigger sister, someone elses, my husbands, my dads, boyfriends, grandpa, bigger person, quarterback, rugby player, eighties, power suit, shoulder pads from eighties, kid in, child in, dressing up box, dress up',
  },
} satisfies Sayings
