/** Where on the body or the muslin. */
import type { Sayings } from '../concept.ts'

export const PLACES = {
  neck: {
    said: 'neck edge',
    words:
      'neck, neckline, neck line, neckhole, neck hole, neck edge, neck opening, neckedge, neck seam, neckband, neck band, scoop, scoop neck, boat neck, round neck, square neck, crew neck, bateau, neck hole edge, neck cut, necking, throat hole, polo neck, turtleneck, turtle neck, jewel neck, keyhole neck, sweetheart, opening for head, head hole, head opening, neckhole edge, neck finish, neckline edge, neck curve, neck hem',
  },
  vNeck: {
    said: 'V of the neck',
    words:
      'v neck, vee, vee neck, the v, v neckline, wrap front, neck v, vneck, v shape neck, point of v, wrap neckline, crossover front, cross over front, surplice',
  },
  throat: {
    said: 'throat',
    words:
      'throat, windpipe, wind pipe, gullet, larynx, adams apple, voice box, hollow of throat, pit of neck, thrapple, front of neck hollow, adam apple, chin, under chin, up at chin, gorge, goozle, craw, voicebox, front of my throat, trachea, jugular, airway',
  },
  nape: {
    said: 'nape',
    words:
      'nape, nape of neck, scruff, scruff of neck, hairline, back of head, cervical, vertebra, vertebrae, neck bone, back neck, neck back, back neckline, back of neck, neck at back, neck in back, back neck edge, rear neckline, rear neck, neck behind, behind neck, behind my neck, neck facing at back, back collar, collar at back, label, hood, nape edge, nape area, back neckband, neckband at back, between spine and neckband, back of collar, behind collar, top of back neck, neck hole at back, neck opening at back, back neck seam, behind my head, neck rear, back of neckband, back necked, where my hair stops, where hair ends, hair line at back, below my hair, top of spine, behind my ears, pony tail, ponytail',
  },
  frontNeck: {
    said: 'front neck edge',
    words:
      'front neck, front neckline, neck front, front of neck, front of neckline, neckline in front, neck in front, neck at front, neckline at front, front neck edge, decolletage, decollete, neckline at chest, neckline over chest, neckline against chest, front neckband, front of collar, down my top, down my blouse, down my front, see down my top, front of top, low cut',
  },
  neckSide: {
    said: 'side of the neck',
    words:
      'neck point, neck end, side neck, side of neck, neck side, shoulder neck point, trapezius, neck muscle, muscle beside neck, near neck, next to neck, beside neck, by neck, close to neck, inner end of shoulder, inner shoulder, where it meets neck, where it meets my neck, neck edge of shoulder, collar end of shoulder, neck end of shoulder, by my neck, right by neck, by collar, side of my neck, neck side of shoulder, base of neck, root of neck, up by neck, neck shoulder, slope of neck',
  },
  collar: {
    said: 'collar',
    words:
      'collar, collar band, collar stand, stand collar, mandarin, collar seam, collars, peter pan collar, shirt collar, collar edge, collar fall',
  },
  collarbone: {
    said: 'collarbone',
    words:
      'collarbone, collar bone, collarbones, collar bones, clavicle, breastbone, breast bone, sternum, clavicles, below throat, hollows above chest, breast plate',
  },
  shoulder: {
    said: 'shoulder',
    words: 'shoulder, shoulders, shoulder area, shoulder part',
  },
  shoulderTip: {
    said: 'shoulder tip',
    words:
      'shoulder tip, tip of shoulder, shoulder point, point of shoulder, shoulder end, end of shoulder, shoulder bone, bone of shoulder, shoulder corner, corner of shoulder, outer shoulder, outer end of shoulder, shoulder joint, acromion, shoulder edge, edge of shoulder, pointy bit of shoulder, bony bit of shoulder, bony part of shoulder, shoulder top, top of shoulder, arm end, arm end of shoulder, outside of shoulder, outer end, ends of shoulders, tips of shoulders, corners of shoulders, outside ends of shoulders, shoulder knob, knob of shoulder, end of my shoulders, shoulder ball, ball of shoulder, tip of my shoulder, far end of shoulder, arm side of shoulder, shoulder extremity, shoulder head, edges of shoulders, corner of my shoulder, bony end, outer part of shoulder, outside edge of shoulder, cap of shoulder, shoulder cap, very end of shoulder',
  },
  shoulderSeam: {
    said: 'shoulder seam',
    words:
      'shoulder seem, shoulder seems, shoulder seam, seam of shoulder, shoulder line, shoulder stitching, shoulder stitch line, seam on shoulder, seam on top of shoulder, seam along shoulder, seam across shoulder, top seam, top of shoulder seam, seam at shoulder, seam on top of my shoulders, seam atop shoulder, line of stitching on shoulder, shoulder stitches, shoulder join, seam over shoulder, seam from neck to arm, seam that should be on top, seam supposed to be on top, join on top, join on top of shoulder, seam up top, ridge of shoulder seam, join along shoulder, join at top of shoulder',
  },
  shoulderLength: {
    said: 'shoulder length',
    words:
      'shoulder length, length of shoulder, shoulder width, width of shoulder, shoulder breadth, shoulder seam length, inch of shoulder, bit of shoulder, shoulder long, shoulders long, length along shoulder',
  },
  armhole: {
    said: 'armhole',
    words:
      'armhole, arm hole, armscye, scye, armseye, arms eye, arm eye, armsye, armscy, arm opening, opening for arm, hole for arm, arm cut out, armhole edge, armhole seam, armhole curve, armhole line, tank armhole, arm edge, arms hole, armholes, arm holes, arm cutout, sleeve hole, arm slot, arm scye, armcye, arm cutouts, arms opening, armhole binding, armsai, sleeve opening of vest, arm gap, where arm goes in, where arm comes out, where arms come out, where arms go in, hole my arm goes through, place for arm, way out for arm, arm holes of',
  },
  frontArmhole: {
    said: 'front armhole',
    words:
      'front armhole, front of armhole, armhole front, armhole in front, armhole at front, front scye, fore scye, front armscye, front edge of armhole, front of arm hole, front of arm opening, front curve of armhole, armhole towards bust, armhole by bust, armhole near bust, armhole beside bust, in front of each arm, front of each arm, front curve of arm hole, armhole front edge, armhole by my boob, armhole near boob, front side armhole, armhole front side',
  },
  backArmhole: {
    said: 'back armhole',
    words:
      'back armhole, back of armhole, armhole back, armhole in back, armhole at back, back scye, rear armhole, hind scye, back armscye, armhole behind, back of arm hole, back of arm opening, armhole rear, hindarm, hind arm, back edge of armhole, back curve of armhole, armhole by shoulder blade, armhole near blade, armhole near shoulder blade, armhole over shoulder blade, back side armhole, armhole back side, rear edge of armhole, behind armhole, armhole towards back, armhole at rear, armhole on back, arm hole on back',
  },
  underarm: {
    said: 'underarm',
    words:
      'underarm, under arm, under my arm, under arms, armpit, arm pit, pit, pits, oxter, axilla, below arm, below armpit, beneath arm, underneath arm, under my armpit, under armhole, underarm seam, underarm point, arm pits, armpits, beneath my arms, under each arm, below my arms, under my armpits, side of breast under arm, bottom of armhole, armhole bottom, base of armhole, lowest point of armhole, up in my armpit, under the oxter, pit of arm, deodorant, underam, under armpit, where my arm meets my side, where arm meets body',
  },
  arm: { said: 'arm', words: 'arm, arms, limb' },
  upperArm: {
    said: 'upper arm',
    words:
      'upper arm, bicep, biceps, tricep, triceps, top of arm, top of my arm, arm muscle, muscular arm, bingo wing, bingo wings, fat arm, big arms, upper sleeve, thick of arm, arms too big, arms too fat, arms big, upper part of sleeve, round of sleeve, sleeve round, sleeve girth, sleeve width, tops of arms, upper arms, past bicep, tops of my arms, fleshy part of arm, my arms are big, chunky arms, strong arms, thick arms, large arms, heavy arms, muscles, muscly arms, arm girth, around arm, round arm, round my arms, guns, upper half of arm, upper half of sleeve, sleeve bicep, bat wings of my arms, weight lifting, arms into sleeves, arms in to sleeves, get my arms in',
  },
  elbow: {
    said: 'elbow',
    words:
      'elbow, crook of arm, crook, bent arm, funny bone, elbows, fold of arm, bend of elbow, inside of elbow, middle of arm, at the bend, crease of elbow, arm joint, fold my elbow, elbow joint, elbo',
  },
  wrist: {
    said: 'wrist',
    words:
      'wrist, forearm, lower arm, lower sleeve, cuff, wrists, cuffs, lower part of arm, lower part of sleeve',
  },
  sleeve: {
    said: 'sleeve',
    words:
      'sleeve, sleeves, slv, sleave, sleves, arms of it, arms of the blouse, arms of shirt, sleeved',
  },
  sleeveCap: {
    said: 'sleeve cap',
    words:
      'sleeve cap, cap, caps, sleevehead, sleeve head, head of sleeve, crown of sleeve, sleeve crown, crown, top of sleeve, sleeve top, tops of sleeves, sleeve mountain, cap height, cap seam, cap of sleeve, sleeve seam at top, top of sleeve seam, sleeve tops, sleeve head seam, cap of set in sleeve, top of set in sleeve, top of set in sleeves, sleeve crown height, top edge of sleeve, ball of sleeve, upper edge of set in sleeve, sleeve bulge, curve of sleeve, hump of sleeve, sleeve hump, sleeve hill, cap curve, cap line, head of the sleeve, sleeve heads, caps of sleeves, shoulder of sleeve, sleeve at shoulder, top of arm part, sleeve shoulder',
  },
  sleeveHem: {
    said: 'sleeve edge',
    words:
      'sleeve hem, sleeve edge, edge of sleeve, hem of sleeve, sleeve bottom, bottom of sleeve, sleeve end, end of sleeve, sleeve opening, opening of sleeve, lower edge of sleeve, cap hem, cap edge, edge of cap sleeve, cap sleeve hem, cap sleeve edge, sleeve mouth, sleeve cuff, hem of cap sleeve, sleeve lower edge, hem of cape sleeve, hem of drape sleeve, hem of draped sleeve, drape hem, arm hem, wrist edge, cuff edge, rim of sleeve, sleeve rim, sleeves lower edge, end of my sleeve, ends of sleeves, sleeve finish, edge of my sleeve, edge of the little sleeve, edge of short sleeve, hem of short sleeve, short sleeve hem, bottom of my sleeve, bottom edge of sleeve, hem on sleeve, sleeve border, sleeve hole, mouth of sleeve, sleeve hems, open end of sleeve, lower opening of sleeve, sleeve openings, hem round arm, band of sleeve, cuff of sleeve, edge round arm, edge around arm, round sleeve hem, edge of drape, edge of the drapey sleeve',
  },
  sleeveSeam: {
    said: 'sleeve seam',
    words:
      'sleeve seem, sleeve seam, seam of sleeve, sleeve underarm seam, underarm seam of sleeve, sleeve stitching, armhole seam of sleeve, seam where sleeve joins, where sleeve joins, where arm joins, seam in sleeve, seam under sleeve, line of sleeve seam, sleeve join, joining of sleeve, seam that joins sleeve, seam between sleeve and body',
  },
  cutInSleeve: {
    said: 'sleeve cut in one with the body',
    words:
      'cap sleeve, cape sleeve, drape sleeve, draped sleeve, drape of sleeve, sleeve drape, kimono, kimono sleeve, dolman, dolman sleeve, batwing, bat wing sleeve, magyar, cut on sleeve, cut in one, cut in one sleeve, grown on sleeve, grown on, flutter sleeve, floaty sleeve, butterfly sleeve, sleeve part of body, sleeve part of top, sleeve is part of top, sleeve is part of body, sleeve in one, all in one sleeve, sleeve cut with body, little sleeve, short sleeve, wide sleeve, circle sleeve, circular sleeve, angel sleeve, flowy sleeve, hanging sleeve, extended sleeve, attached sleeve, built in sleeve, no seam sleeve, sleeve without seam, sleeve has no seam, drapey sleeve, drapey sleeves, drapy sleeve, draping sleeve, kimono blouse, kimono top, batwing blouse, batwing top, batwing sleeve, poncho sleeve, poncho, bell sleeve, soft sleeve, loose sleeve, sleeve cut together, sleeve without armhole, no armhole seam, no armhole, sleeve in same piece, sleeve same piece, same piece as body, sleeve all in one with body, one piece sleeve, cut on, cut on cap, cap sleeves, little cap sleeves, sleeve extension, caftan, kaftan, waterfall sleeve, swing sleeve, sleeve cut onto body, sleeve cut on to body, sleeve cut in one, cutin sleeve, half circle sleeve, ruffle sleeve, pretty folds of sleeve, wing sleeve',
  },
  overarm: {
    said: 'overarm seam',
    words:
      'overarm, over arm, overarm seam, seam over arm, seam along top of arm, top arm seam, upper edge, upper edge of sleeve, seam on top of sleeve, seam on top of arm, overarm line, top line of sleeve, line over arm, upper line of sleeve, seam that runs over arm, seam running down arm, seam down arm, seam over shoulder and arm, top of sleeve when arm hangs, upper side of sleeve',
  },
  upperChest: {
    said: 'upper chest',
    words:
      'upper chest, top of chest, chest top, cross chest, across chest, upper front, front chest, above bust, above my boobs, above breasts, above chest, over bust line, below collarbone, under collarbone, below collar bones, between collarbone and bust, between neck and bust, between shoulder and bust, between armholes, chest above bust, high bust, top part of front, upper part of front, upper bust, top of my chest, up high in front, high up in front, upper part of chest, upper part of my chest, over my chest above bust, décolleté area, chest plate, chest below collarbones, across top of chest, across my chest above, below my collarbones, under collarbones, under collar bones, upper front of blouse, armpit to armpit in front, from armpit to armpit in front, front between arms, front between my arms, pectoral, between my arms in front, arm to arm across front',
  },
  chest: {
    said: 'chest',
    words: 'chest, chest line, thorax, pecs, chests, chest area, upper torso, breast bone area',
  },
  bust: {
    said: 'bust',
    words:
      'bust, bustline, bust line, bust level, boob, boobs, boobie, boobies, breast, breasts, bosom, bosoms, busom, bussom, tit, tits, titties, the girls, my girls, girls, rack, jugs, knockers, puppies, bazongas, chesticles, paps, chebs, diddies, norks, mammaries, full bust, bust area, breast area, breast part, bust part, chest portion, chest part, bra cup area, bosum, bristols, hooters, melons, bubs, bewbs, boobage, busts, mams, milkers, double d, dd, ddd, chi chi, chichis, lady lumps, assets, cleave, breats, brest, brests, breasted, where bust, bust fullness, bra size, up top, bosoms, bosom, chest bumps',
  },
  apex: {
    said: 'bust point',
    words:
      'apex, bust point, bust apex, point of bust, bust tip, tip of bust, nipple, nips, fullest point, fullest part, fullest bit, bust peak, middle of boobs, fullest part of bust, bust prominence, prominence of bust, nipples, bust points, apexes, apices, tip of breast, point of breast, tip of boob, tip of my boob, centre of breast, centre of bust, middle of breast, peak of bust, most prominent, bust centre, high point of bust, bullseye, areola, nip, teat',
  },
  cup: {
    said: 'cup',
    words:
      'cup, cups, bust cup, cup part, cup size, cupped, cupping, a cup, b cup, c cup, bra cups',
  },
  underBust: {
    said: 'under the bust',
    words:
      'under bust, underbust, below bust, beneath bust, under boobs, below boobs, beneath boobs, right underneath boobs, underneath bust, under breasts, below breasts, below breast, under breast, underboob, midriff, ribcage, rib cage, ribs, rib, diaphragm, between bust and waist, empire, empire line, under chest, below chest, under the girls, bra band level, below bust point, under bust point, under my bust, under the breasts, below my boobs, beneath my bust, under breastline, rib area, ribcage area, hug my ribs, bra line, braline, underwire, below girls, underneath girls, below my bust line, below boob, upper waist, upper abdomen, solar plexus, tummy top',
  },
  bustDart: {
    said: 'bust dart',
    words:
      'bust dart, side dart, side bust dart, front dart, french dart, armhole dart, darts at side, side bust darts, darts from side, bustdart, chest dart, breast dart, darts in front, front darts, two front darts, shaping dart',
  },
  waistDart: {
    said: 'waist dart',
    words:
      'waist dart, vertical dart, body dart, waist darts, front waist dart, back waist dart, darts at waist, dart at waist',
  },
  fishEye: {
    said: 'dart pointed at both ends',
    words:
      'fish eye, fisheye, fish eye dart, double pointed dart, double ended dart, two ended dart, double dart, contour dart, diamond dart, long dart, dart with two points, dart pointed at both ends, double point, two pointed dart, dart below waist, lower end of waist dart, dart under waist, dart lower end, lower dart end, lower point of dart, lower tip, bottom end of dart, bottom of dart, bottom tip of dart, bottom point of dart, lens shaped dart, lens dart, fisheye darts, fish eye darts, fish shaped dart, eye shaped dart, long waist darts, long waist dart, long dart through waist, double pointed darts, double ended darts, dart through waist, dart that goes through waist, darts below waist, darts beneath waist, lower part of dart, lower half of dart, bottom half of dart, almond dart, spindle dart, two pointy ends, dart ends below waist, end of dart below waist',
  },
  dart: {
    said: 'dart',
    words:
      'dart, darts, pinch seam, tuck seam, darted, dartts, drat, darting, bust shaping, wedge seam',
  },
  dartTip: {
    said: 'dart tip',
    words:
      'dart tip, tip of dart, dart end, end of dart, dart point, point of dart, where dart ends, where dart stops, dart ends, ends of darts, tips of darts, finish of dart, dart apex, tip of bust dart, bust dart tip, end of bust dart, dart finish, vanishing point, vanishing point of dart, dart finishes, dart vanishes, dart finish point, pointed end of dart, sharp end of dart, very end of dart, last stitch of dart, dart runs out, where dart finishes, end of my darts, final bit of dart, dart tips, where it runs out',
  },
  back: {
    said: 'back',
    words:
      'back, backside part, back part, back portion, rear, hind, behind, back side, back piece, back panel, back view, backs, in back, at back, rearward side, behind me, in behind, on back, dorsal, hinder, rere',
  },
  upperBack: {
    said: 'upper back',
    words:
      'upper back, top of back, back top, back up top, high back, upper part of back, across back, cross back, across shoulders at back, across shoulders in back, back across shoulders, back width, width of back, back between arms, between shoulders, back of shoulders, shoulder area at back, back shoulder, across my back, back yoke, yoke, across shoulders behind, top half of back, high on back, back from arm to arm, armhole to armhole behind, from armhole to armhole behind, arm to arm behind, between my arms at back, back across',
  },
  blade: {
    said: 'shoulder blade',
    words:
      'shoulder blade, shoulder blades, blade, blades, scapula, scapulae, wing bone, wing bones, blade bone, between blades, between shoulder blades, blade level, shoulder bone on back, back shoulder bone, blade prominence, shoulderblade, shoulderblades, shoulder blade bones, wings of my back, scapular, bladebone, blade bones, shoulder wings',
  },
  lowerBack: {
    said: 'small of the back',
    words:
      'lower back, small of back, small of my back, lumbar, hollow of back, low back, dip of back, curve of back, bottom of back, back above waist, above my bum, above bum, above bottom, above seat, on top of bum, above butt, above my bottom, back arch, arch of back, dip of spine, above my backside, above backside, just above my bottom, just above bottom, small of the back, inward curve of back, curve of my lower back, base of spine, base of my spine, inward curve of lower back, back dip, dip above bottom, kidney, kidneys, low in back, back hollow, bottom of spine, tailbone, over top of bottom, on top of my bottom, top of my bum, top of bum, above tail, coccyx, above my rear, lower part of back, lower spine, above hips at back, waist hollow at back, back over waist',
  },
  backWaist: {
    said: 'back waist',
    words:
      'back waist, back waistline, waist back, waist at back, waist in back, waist of back, back at waist, waist behind, rear waist, back of waist, back of waistline, waist at rear, waist on back, back of my waist, back waistband, waist back part, waist of the back, waist behind me, waist area of back, back around waist, back near waist, rear of waist',
  },
  frontWaist: {
    said: 'front waist',
    words:
      'front waist, front waistline, waist front, waist in front, waist at front, front of waist, front of waistline, front of my waist, waist on front, waistband in front, waist centre front, front waistband, waist below bust in front',
  },
  spine: {
    said: 'spine',
    words: 'spine, backbone, back bone, top of spine, backbones, spinal, vertebral, top vertebra',
  },
  waist: {
    said: 'waist',
    words:
      'waist, waistline, waist line, waste, wasteline, waistband, waist band, waist seam, natural waist, middle of body, midsection, mid section, waist level, waist fitting, my middle, elastic, belt, waist elastic, waists, waistbands, waisted, wasit, waiste, girdle line, tie line, where i tie my apron, string round my waist, narrowest part, smallest part of me, middle part, tummy line, round my middle, around my middle, mid riff, where it should nip in, narrow part, narrow bit, narrow place, slim part, where it curves in',
  },
  hip: {
    said: 'hip',
    words:
      'hip, hips, hip line, hip level, high hip, thigh, thighs, saddlebags, saddle bags, hip bone, hip area, hipline, hipbones, hipbone, hip bones, haunches, hips area, love handles, upper thighs, hip curve, pelvis, pelvic, widest part, widest part of me',
  },
  seat: {
    said: 'seat',
    words:
      'bum, my bottom, butt, buttocks, backside, back side of me, rear end, arse, ass, booty, derriere, tush, fanny, seat, posterior, bottom cheeks, glutes, tail end, big bottom, over bottom, across bottom, my behind, my rear, bums, my butt, my backside, rump, keister, tushy, caboose, hiney, heinie, my sit upon, sit bones, bumm, buttock, cheeks, gluteus, fesses, round bottom, bubble butt, bottom sticks out, my posterior, round my bottom, over my bottom, backside, rump, cheeks',
  },
  tummy: {
    said: 'abdomen',
    words:
      'tummy, belly, stomach, abdomen, abdominal, tum, gut, pooch, paunch, pot belly, potbelly, mum tum, mummy tummy, baby belly, baby bump, belly button, navel, apron, wame, kyte, food baby, spare tyre, bloated, bellies, tums, stomach area, belly area, belly fat, beer belly, tummies, front of stomach, stomache, midsection in front, muffin top, roundness in front, my front below waist, abdominals, bump, round tummy, lower belly, womb, guts, apron belly, fupa, baby weight, after baby',
  },
  hem: {
    said: 'hem',
    words:
      'hem, hemline, hem line, bottom edge, lower edge, bottom hem, bottom, at bottom, lower hem, edge at bottom, shirt tail, shirttail, tail, hem of dress, hem of blouse, hems, hemm, lower border, bottom border, end of the dress, bottom of dress, bottom of my dress, bottom of blouse, bottom of skirt, bottom of it, lower edge of dress, bottom line, edge at floor, edge of skirt, bottom edge of dress, hemming',
  },
  frontHem: {
    said: 'front hem',
    words:
      'front hem, hem front, hem in front, hem at front, front of hem, fore hem, front bottom edge, front edge of hem, hem over belly, hem in the front, hem of front, hem on front, bottom front, front of skirt hem, front edge at bottom, front bottom',
  },
  backHem: {
    said: 'back hem',
    words:
      'back hem, hem back, hem in back, hem at back, back of hem, hem behind, rear hem, back side hem, hem at rear, hem in rear, hem of back, hem on back, bottom at back, back bottom edge, back edge of hem, bottom back, shirt tails',
  },
  skirt: {
    said: 'skirt',
    words: 'skirt, skirt part, skirts, skirt of dress, skirting',
  },
  front: {
    said: 'front',
    words:
      'front, fore, front part, front side, in front, at front, front piece, front panel, front view, fronts, frontside, front bodice, frontal, forepart, face side, anterior, front half, front bit, front bodice part, front side piece',
  },
  centre: {
    said: 'centre line',
    words:
      'centre, middle, mid, midline, centre line, central, middles, dead centre, center line, centre seam, middle seam, centre front line, button line, sternum line',
  },
  side: {
    said: 'side',
    words:
      'side, sides, flank, at side, side view, sideways view, sides of body, my side, my sides, flanks',
  },
  sideSeam: {
    said: 'side seam',
    words:
      'side seem, side seems, side seam, sideseam, side seams, side line, side stitch, side stitching, seam at side, seam down side, seam on side, side join, seam along side, line at side, line down side, seam on my side, seams at the sides, seam on the side, side seams line, seam that runs down side, seam on each side, side seems, seams down side, the side join, side closing, side stitch line',
  },
  placket: {
    said: 'button edge',
    words:
      'button, buttons, butten, buttoned, buttonhole, button hole, placket, button placket, button band, button stand, snap, snaps, press stud, press studs, popper, poppers, front opening, front closure, closure, fastening, front edge, button front, hook, hooks, shirt front, fastenings, fastener, fasteners, toggles, button holes, button closure, buttoning, button line, buttons area, poppas, overlap, front edges, between button, between the fastenings, button two and three, buttoned front, button up, buttoned up, front fastening, hook and eye, hooks and eyes',
  },
} satisfies Sayings

export const PARTS = {
  zip: {
    said: 'zip',
    words: 'zip, zipper, zip up, zipped, zips, do zip up, zippers, side zip, back zip',
  },
  bra: {
    said: 'bra',
    words:
      'bra, brassiere, lingerie, underwear, undies, bralette, bra band, underthings, undergarment, side boob, sideboob, side of boob, side of bust, side of breast, bras, bra cup shows, brazier, brassier, my smalls, bare side, bare skin at side, side of my bra, underpinnings, undergarments, foundation garment, bra at side, bralet, sports bra, corsetry',
  },
  strap: {
    said: 'straps',
    words:
      'strap, straps, bra strap, bra straps, lingerie straps, undies straps, tank straps, cami straps, camisole straps, shoulder straps, bra straps out',
  },
  seam: {
    said: 'seam',
    words:
      'seam, seams, stitching, stitch line, stitches, join, seem, seems, line of stitching, sewn line, stitchings, sewing line',
  },
  edge: { said: 'edge', words: 'edge, edges, rim, border' },
  facing: { said: 'facing', words: 'facing, facings, bias strip, bias binding' },
  bodice: {
    said: 'bodice',
    words:
      'bodice, boddice, body, torso, body part, trunk, upper body, bodys, upper part, upper half, torsos, top half, body of dress, body of blouse, body of it, bodies',
  },
  skin: { said: 'skin', words: 'skin, flesh' },
  sleeveless: {
    said: 'sleeveless',
    words:
      'sleeveless, no sleeves, without sleeves, tank, tank top, vest top, shell top, shell, singlet, vest, sleeveless shell, without sleeve, sleeve less, camisole, cami, armholes bare',
  },
  tip: { said: 'tip', words: 'tip, tips, ends, point, points, corner' },
  bone: { said: 'bone', words: 'bone, bony, joint' },
  garment: {
    said: 'garment',
    words: 'garment, blouse, shirt, top, dress, thing, tunic, coat, jacket, frock, outfit',
  },
  whole: {
    said: 'the whole garment',
    words:
      'everything, everywhere, all over, whole, whole thing, entire, entirely, overall, complete, completely, from top to bottom, top to bottom, head to toe, all parts, whole garment, whole dress, whole blouse, full blouse, total, in general, generally, everyplace, all of it, everything is, all is, whole top, entire garment, throughout, in every direction, absolutely everywhere, altogether, wherever, every bit, every part, all parts of it, all of the blouse, from neck to hem, from shoulder to hem, full garment, all way through, whole blooming thing, from head to foot, nothing closes, nothing fits, nowhere, all seams, every seam, anywhere, absolutely, front back sides, all the pieces, all places, in all places, whole body of it, in every place',
  },
  cloth: { said: 'cloth', words: 'cloth, fabric, material, textile, stuff, tissue' },
  toile: {
    said: 'muslin',
    words:
      'muslin, toile, calico, mock up, mockup, mock, sample, sample cloth, test one, test garment, test version, test, trial, trial version, practice, practice version, prototype, wearable muslin, first version, tester, draft version, rehearsal, bedsheet version, old sheet, muslins, toil, toiles, trial blouse, trial garment, bedsheet, old bedsheet, bed sheet, cheap cotton, cheap fabric, cheap cloth, test blouse, test dress, tryout, try out, try out version, dummy version, muslin version, sample garment, sample version, first try, first one, first go, rough version, the first blouse, dry run, fitting shell, fit sample, test sew, cotton test, test fabric, mock garment, paper version, half scale',
  },
  realCloth: {
    said: 'the good cloth',
    words:
      'real fabric, real one, real cloth, real material, real thing, good fabric, good cloth, nice fabric, fashion fabric, final fabric, final, final one, final version, finished, finished garment, silk, crepe, linen, wool, viscose, rayon, satin, chiffon, velvet, proper fabric, actual fabric, expensive fabric, final garment, finished one, proper cloth, my fabric, other fabric, different fabric, new fabric, proper one, proper blouse, good one, good version, nice version, actual blouse, actual dress, actual garment, final blouse, final dress, finished blouse, finished dress, real blouse, real dress, polyester, jersey, cotton lawn, lawn, georgette, taffeta, brocade, organza, tweed, denim, drapey fabric, slippery fabric, stretch fabric, good silk, fancy fabric, posh fabric, second version, chosen fabric, party fabric, lining fabric, sateen, challis, voile, batiste, poplin, corduroy, double gauze, linen version, the silk, viscose version, fashion version, in wool, expensive cloth, real deal, the proper one',
  },
} satisfies Sayings
