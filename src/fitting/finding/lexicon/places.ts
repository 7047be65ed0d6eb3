/** Where on the body or the muslin. */
import type { Concepts } from '../concept.ts'

export const PLACES = {
  neck: {
    kind: 'place',
    said: 'neck edge',
    words:
      'neck, neckline, neck line, neckhole, neck hole, neck edge, neck opening, neckedge, neck seam, neckband, neck band, scoop, scoop neck, boat neck, round neck, square neck, crew neck, bateau',
  },
  vNeck: {
    kind: 'place',
    said: 'V of the neck',
    words: 'v neck, vee, vee neck, the v, v neckline, plunge, wrap front, neck v',
  },
  throat: {
    kind: 'place',
    said: 'throat',
    words:
      'throat, windpipe, wind pipe, gullet, larynx, adams apple, voice box, hollow of throat, pit of neck, thrapple, front of neck hollow',
  },
  nape: {
    kind: 'place',
    said: 'nape',
    words:
      'nape, nape of neck, scruff, scruff of neck, hairline, back of head, cervical, vertebra, vertebrae, neck bone, back neck, neck back, back neckline, back of neck, neck at back, neck in back, back neck edge, rear neckline, rear neck, neck behind, behind neck, behind my neck, neck facing at back, back collar, collar at back, label, hood',
  },
  frontNeck: {
    kind: 'place',
    said: 'front neck edge',
    words:
      'front neck, front neckline, neck front, front of neck, front of neckline, neckline in front, neck in front, neck at front, neckline at front, front neck edge, cleavage, decolletage, decollete',
  },
  neckSide: {
    kind: 'place',
    said: 'side of the neck',
    words:
      'neck point, neck end, side neck, side of neck, neck side, shoulder neck point, trapezius, neck muscle, muscle beside neck, near neck, next to neck, beside neck, by neck, close to neck, inner end of shoulder, inner shoulder',
  },
  collar: {
    kind: 'place',
    said: 'collar',
    words: 'collar, collar band, collar stand, stand collar, mandarin, collar seam',
  },
  collarbone: {
    kind: 'place',
    said: 'collarbone',
    words:
      'collarbone, collar bone, collarbones, collar bones, clavicle, breastbone, breast bone, sternum',
  },
  shoulder: {
    kind: 'place',
    said: 'shoulder',
    words: 'shoulder, shoulders, shoulder area, shoulder part',
  },
  shoulderTip: {
    kind: 'place',
    said: 'shoulder tip',
    words:
      'shoulder tip, tip of shoulder, shoulder point, point of shoulder, shoulder end, end of shoulder, shoulder bone, bone of shoulder, shoulder corner, corner of shoulder, outer shoulder, outer end of shoulder, shoulder joint, acromion, shoulder edge, edge of shoulder, pointy bit of shoulder, bony bit of shoulder, bony part of shoulder, shoulder top, top of shoulder, arm end, arm end of shoulder, outside of shoulder, outer end, ends of shoulders, tips of shoulders',
  },
  shoulderSeam: {
    kind: 'place',
    said: 'shoulder seam',
    words:
      'shoulder seam, seam of shoulder, shoulder line, shoulder stitching, shoulder stitch line, seam on shoulder, seam on top of shoulder, seam along shoulder, seam across shoulder, top seam, top of shoulder seam, seam at shoulder',
  },
  shoulderLength: {
    kind: 'place',
    said: 'shoulder length',
    words:
      'shoulder length, length of shoulder, shoulder width, width of shoulder, shoulder breadth, shoulder seam length',
  },
  armhole: {
    kind: 'place',
    said: 'armhole',
    words:
      'armhole, arm hole, armscye, scye, armseye, arms eye, arm eye, armsye, armscy, arm opening, opening for arm, hole for arm, arm cut out, armhole edge, armhole seam, armhole curve, armhole line, tank armhole, arm edge',
  },
  frontArmhole: {
    kind: 'place',
    said: 'front armhole',
    words:
      'front armhole, front of armhole, armhole front, armhole in front, armhole at front, front scye, fore scye, front armscye, front edge of armhole, front of arm hole, front of arm opening, front curve of armhole',
  },
  backArmhole: {
    kind: 'place',
    said: 'back armhole',
    words:
      'back armhole, back of armhole, armhole back, armhole in back, armhole at back, back scye, rear armhole, hind scye, back armscye, armhole behind, back of arm hole, back of arm opening, armhole rear, hindarm, hind arm',
  },
  underarm: {
    kind: 'place',
    said: 'underarm',
    words:
      'underarm, under arm, under my arm, under arms, armpit, arm pit, pit, pits, oxter, axilla, below arm, below armpit, beneath arm, underneath arm, under my armpit, under armhole, underarm seam, underarm point',
  },
  arm: { kind: 'place', said: 'arm', words: 'arm, arms, limb' },
  upperArm: {
    kind: 'place',
    said: 'upper arm',
    words:
      'upper arm, bicep, biceps, tricep, triceps, top of arm, top of my arm, arm muscle, muscular arm, bingo wing, bingo wings, fat arm, big arms, upper sleeve, thick of arm, arms too big, arms too fat, arms big, upper part of sleeve, round of sleeve, sleeve round, sleeve girth, sleeve width, tops of arms',
  },
  elbow: {
    kind: 'place',
    said: 'elbow',
    words: 'elbow, crook of arm, crook, bent arm, funny bone',
  },
  wrist: { kind: 'place', said: 'wrist', words: 'wrist, forearm, lower arm, lower sleeve, cuff' },
  sleeve: { kind: 'place', said: 'sleeve', words: 'sleeve, sleeves' },
  sleeveCap: {
    kind: 'place',
    said: 'sleeve cap',
    words:
      'sleeve cap, cap, caps, sleevehead, sleeve head, head of sleeve, crown of sleeve, sleeve crown, crown, top of sleeve, sleeve top, tops of sleeves, sleeve mountain, cap height, cap seam, cap of sleeve, sleeve seam at top, top of sleeve seam, sleeve tops',
  },
  sleeveHem: {
    kind: 'place',
    said: 'sleeve edge',
    words:
      'sleeve hem, sleeve edge, edge of sleeve, hem of sleeve, sleeve bottom, bottom of sleeve, sleeve end, end of sleeve, sleeve opening, opening of sleeve, lower edge of sleeve, cap hem, cap edge, edge of cap sleeve, cap sleeve hem, cap sleeve edge, sleeve mouth, sleeve cuff, hem of cap sleeve, sleeve lower edge, hem of cape sleeve, hem of drape sleeve, hem of draped sleeve, drape hem, arm hem, wrist edge, cuff edge',
  },
  sleeveSeam: {
    kind: 'place',
    said: 'sleeve seam',
    words:
      'sleeve seam, seam of sleeve, sleeve underarm seam, underarm seam of sleeve, sleeve stitching, armhole seam of sleeve, seam where sleeve joins, where sleeve joins, where arm joins',
  },
  cutInSleeve: {
    kind: 'place',
    said: 'sleeve cut in one with the body',
    words:
      'cap sleeve, cape sleeve, drape sleeve, draped sleeve, drape of sleeve, sleeve drape, kimono, kimono sleeve, dolman, dolman sleeve, batwing, bat wing sleeve, magyar, cut on sleeve, cut in one, cut in one sleeve, grown on sleeve, grown on, flutter sleeve, floaty sleeve, butterfly sleeve, sleeve part of body, sleeve part of top, sleeve is part of top, sleeve is part of body, sleeve in one, all in one sleeve, sleeve cut with body, little sleeve, short sleeve, wide sleeve, circle sleeve, circular sleeve, angel sleeve, flowy sleeve, hanging sleeve, extended sleeve, attached sleeve, built in sleeve, no seam sleeve, sleeve without seam, sleeve has no seam',
  },
  overarm: {
    kind: 'place',
    said: 'overarm seam',
    words:
      'overarm, over arm, overarm seam, seam over arm, seam along top of arm, top arm seam, upper edge, upper edge of sleeve, seam on top of sleeve, seam on top of arm',
  },
  upperChest: {
    kind: 'place',
    said: 'upper chest',
    words:
      'upper chest, top of chest, chest top, cross chest, across chest, upper front, front chest, above bust, above my boobs, above breasts, above chest, over bust line, below collarbone, under collarbone, below collar bones, between collarbone and bust, between neck and bust, between shoulder and bust, between armholes, chest above bust, high bust, top part of front, upper part of front, upper bust',
  },
  chest: { kind: 'place', said: 'chest', words: 'chest, chest line, thorax, pecs' },
  bust: {
    kind: 'place',
    said: 'bust',
    words:
      'bust, bustline, bust line, bust level, boob, boobs, boobie, boobies, breast, breasts, bosom, bosoms, busom, bussom, tit, tits, titties, the girls, my girls, girls, rack, bazooka, jugs, knockers, puppies, bazongas, chesticles, paps, chebs, diddies, norks, mammaries, full bust, bust area, breast area, breast part, bust part, chest portion, chest part, bra cup area',
  },
  apex: {
    kind: 'place',
    said: 'bust point',
    words:
      'apex, bust point, bust apex, point of bust, bust tip, tip of bust, nipple, nips, fullest point, fullest part, fullest bit, bust peak, middle of boobs, fullest part of bust, bust prominence, prominence of bust',
  },
  cup: { kind: 'place', said: 'cup', words: 'cup, cups, bust cup, cup part, cup size' },
  underBust: {
    kind: 'place',
    said: 'under the bust',
    words:
      'under bust, underbust, below bust, beneath bust, under boobs, below boobs, beneath boobs, right underneath boobs, underneath bust, under breasts, below breasts, below breast, under breast, underboob, midriff, ribcage, rib cage, ribs, rib, diaphragm, between bust and waist, empire, empire line, under chest, below chest, under the girls, bra band level, below bust point, under bust point',
  },
  bustDart: {
    kind: 'place',
    said: 'bust dart',
    words: 'bust dart, side dart, side bust dart, front dart, french dart, armhole dart',
  },
  waistDart: {
    kind: 'place',
    said: 'waist dart',
    words: 'waist dart, vertical dart, body dart',
  },
  fishEye: {
    kind: 'place',
    said: 'dart pointed at both ends',
    words:
      'fish eye, fisheye, fish eye dart, double pointed dart, double ended dart, two ended dart, double dart, contour dart, diamond dart, long dart, dart with two points, dart pointed at both ends, double point, two pointed dart, dart below waist, lower end of waist dart, dart under waist, dart lower end, lower dart end, lower point of dart, lower tip, bottom end of dart, bottom of dart, bottom tip of dart, bottom point of dart, lens shaped dart, lens dart',
  },
  dart: { kind: 'place', said: 'dart', words: 'dart, darts, pinch seam, tuck seam' },
  dartTip: {
    kind: 'place',
    said: 'dart tip',
    words:
      'dart tip, tip of dart, dart end, end of dart, dart point, point of dart, where dart ends, where dart stops, dart ends, ends of darts, tips of darts, finish of dart, dart apex, tip of bust dart, bust dart tip, end of bust dart, dart finish',
  },
  back: {
    kind: 'place',
    said: 'back',
    words:
      'back, backside part, back part, back portion, rear, hind, behind, back side, back piece, back panel, back view, backs, in back, at back',
  },
  upperBack: {
    kind: 'place',
    said: 'upper back',
    words:
      'upper back, top of back, back top, back up top, high back, upper part of back, across back, cross back, across shoulders at back, across shoulders in back, back across shoulders, back width, width of back, back between arms, between shoulders',
  },
  blade: {
    kind: 'place',
    said: 'shoulder blade',
    words:
      'shoulder blade, shoulder blades, blade, blades, scapula, scapulae, wing bone, wing bones, blade bone, between blades, between shoulder blades, blade level, shoulder bone on back, back shoulder bone, blade prominence',
  },
  lowerBack: {
    kind: 'place',
    said: 'small of the back',
    words:
      'lower back, small of back, small of my back, lumbar, hollow of back, low back, dip of back, curve of back, bottom of back, back above waist, above my bum, above bum, above bottom, above seat, on top of bum, above butt, above my bottom, back arch, arch of back, dip of spine',
  },
  backWaist: {
    kind: 'place',
    said: 'back waist',
    words:
      'back waist, back waistline, waist back, waist at back, waist in back, waist of back, back at waist, waist behind, rear waist, back of waist, back of waistline',
  },
  frontWaist: {
    kind: 'place',
    said: 'front waist',
    words:
      'front waist, front waistline, waist front, waist in front, waist at front, front of waist, front of waistline, waist front',
  },
  spine: { kind: 'place', said: 'spine', words: 'spine, backbone, back bone, top of spine' },
  waist: {
    kind: 'place',
    said: 'waist',
    words:
      'waist, waistline, waist line, waste, wasteline, waistband, waist band, waist seam, natural waist, middle of body, midsection, mid section, waist level, waist fitting, my middle, elastic, belt, waist elastic',
  },
  hip: {
    kind: 'place',
    said: 'hip',
    words:
      'hip, hips, hip line, hip level, high hip, thigh, thighs, saddlebags, saddle bags, hip bone, hip area',
  },
  seat: {
    kind: 'place',
    said: 'seat',
    words:
      'bum, my bottom, your bottom, butt, buttocks, backside, back side of me, rear end, arse, ass, booty, derriere, tush, fanny, seat, posterior, bottom cheeks, glutes, tail end, big bottom, over bottom, across bottom, my behind, my rear',
  },
  tummy: {
    kind: 'place',
    said: 'abdomen',
    words:
      'tummy, belly, stomach, abdomen, abdominal, tum, gut, pooch, paunch, pot belly, potbelly, mum tum, mummy tummy, baby belly, baby bump, belly button, navel, apron, wame, kyte, food baby, spare tyre, bloated',
  },
  hem: {
    kind: 'place',
    said: 'hem',
    words:
      'hem, hemline, hem line, bottom edge, lower edge, bottom hem, bottom, at bottom, lower hem, edge at bottom, shirt tail, shirttail, tail, hem of dress, hem of blouse',
  },
  frontHem: {
    kind: 'place',
    said: 'front hem',
    words:
      'front hem, hem front, hem in front, hem at front, front of hem, fore hem, front bottom edge, front edge of hem',
  },
  backHem: {
    kind: 'place',
    said: 'back hem',
    words:
      'back hem, hem back, hem in back, hem at back, back of hem, hem behind, rear hem, back side hem',
  },
  skirt: { kind: 'place', said: 'skirt', words: 'skirt, skirt part, skirts' },
  front: {
    kind: 'place',
    said: 'front',
    words:
      'front, fore, front part, front side, in front, at front, front piece, front panel, front view, fronts, frontside, front bodice',
  },
  centre: {
    kind: 'place',
    said: 'centre line',
    words: 'centre, middle, mid, midline, centre line, central',
  },
  side: { kind: 'place', said: 'side', words: 'side, sides, flank, at side, side view' },
  sideSeam: {
    kind: 'place',
    said: 'side seam',
    words:
      'side seam, sideseam, side seams, side line, side stitch, side stitching, seam at side, seam down side, seam on side, side join, seam along side, line at side, line down side',
  },
  placket: {
    kind: 'place',
    said: 'button edge',
    words:
      'button, buttons, butten, buttoned, buttonhole, button hole, placket, button placket, button band, button stand, snap, snaps, press stud, press studs, popper, poppers, front opening, front closure, closure, fastening, front edge, button front, hook, hooks, shirt front',
  },
  zip: { kind: 'part', said: 'zip', words: 'zip, zipper, zip up, zipped' },
  bra: {
    kind: 'part',
    said: 'bra',
    words:
      'bra, brassiere, lingerie, underwear, undies, bralette, bra band, underthings, undergarment, side boob, sideboob, side of boob, side of bust, side of breast',
  },
  strap: {
    kind: 'part',
    said: 'straps',
    words: 'strap, straps, bra strap, bra straps, lingerie straps, undies straps',
  },
  seam: {
    kind: 'part',
    said: 'seam',
    words: 'seam, seams, stitching, stitch line, stitches, join',
  },
  edge: { kind: 'part', said: 'edge', words: 'edge, edges, rim, border' },
  facing: { kind: 'part', said: 'facing', words: 'facing, facings, bias strip, bias binding' },
  bodice: {
    kind: 'part',
    said: 'bodice',
    words: 'bodice, boddice, body, torso, body part, trunk, upper body',
  },
  skin: { kind: 'part', said: 'skin', words: 'skin, flesh, bare' },
  sleeveless: {
    kind: 'part',
    said: 'sleeveless',
    words: 'sleeveless, no sleeves, without sleeves, tank, tank top, vest top',
  },
  tip: { kind: 'part', said: 'tip', words: 'tip, tips, end, ends, point, points, corner' },
  bone: { kind: 'part', said: 'bone', words: 'bone, bony, joint' },
  garment: {
    kind: 'part',
    said: 'garment',
    words: 'garment, blouse, shirt, top, dress, thing, tunic, coat, jacket, frock, outfit',
  },
  whole: {
    kind: 'part',
    said: 'the whole garment',
    words:
      'everything, everywhere, all over, whole, whole thing, entire, entirely, overall, complete, completely, from top to bottom, top to bottom, head to toe, all parts, whole garment, whole dress, whole blouse, full blouse, total, in general, generally, everyplace, all of it, everything is, all is, whole top, entire garment, throughout, in every direction',
  },
  cloth: { kind: 'part', said: 'cloth', words: 'cloth, fabric, material, textile, stuff, tissue' },
  toile: {
    kind: 'part',
    said: 'muslin',
    words:
      'muslin, toile, calico, mock up, mockup, mock, sample, sample cloth, test one, test garment, test version, test, trial, trial version, practice, practice version, prototype, wearable muslin, first version, tester, draft version, rehearsal, bedsheet version, old sheet',
  },
  realCloth: {
    kind: 'part',
    said: 'the good cloth',
    words:
      'real fabric, real one, real cloth, real material, real thing, good fabric, good cloth, nice fabric, fashion fabric, final fabric, final, final fabric, final one, final version, finished, finished garment, silk, crepe, linen, wool, viscose, rayon, satin, chiffon, velvet, proper fabric, actual fabric, expensive fabric, final garment, finished one, proper cloth, my fabric, other fabric, different fabric, new fabric',
  },
} as const satisfies Concepts
