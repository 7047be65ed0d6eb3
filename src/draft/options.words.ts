/** The choices that are words: what each is called, what it does and what it may be. */
export const OPTION_WORDS = {
  overarmRule: {
    label: 'overarm length',
    does: 'Where the length of the overarm comes from.',
    words: {
      auto: 'by the tape where it is taped, else found from the underarm',
      found: 'found from the underarm',
      struck: 'one compass from the side neck, as in a hand draft',
    },
  },
  construction: {
    label: 'construction',
    does: 'The rule a number follows that the tape has not given. What is taped is used in all three.',
    words: {
      measured: 'from your own measurements',
      neckFifths: 'metric, by fifths of the neck',
      bustShares: 'proportional, by shares of the bust',
    },
  },
  neckShape: {
    label: 'neck shape',
    does: 'The line of the neck edge. A boat neck wants a wider and shallower neck, a scoop a deeper one.',
    words: { round: 'round', square: 'square', vee: 'V', boat: 'boat', scoop: 'scoop' },
  },
  shaping: {
    label: 'waist shaping',
    does: 'Darts follow the waist; straight hangs from the bust.',
    words: { darts: 'waist darts', straight: 'straight, no darts' },
  },
  waistDarts: {
    label: 'waist darts on each half',
    does: 'Two narrow darts follow a waist more softly than one; not for a small surplus, which one holds.',
    words: { asNeeded: 'one, a second where one would be too wide', two: 'two' },
  },
  surplus: {
    label: 'what one dart cannot hold',
    does: 'Where the surplus at the waist goes when one dart would be too wide.',
    words: {
      auto: 'more at the side, then a second dart, then the centre back',
      twoDarts: 'a second dart at once',
      centreBack: 'the centre back before a second dart',
    },
  },
  dartAt: {
    label: 'bust dart',
    does: 'Where the dart that shapes the bust lies. Its tip stays off the bust tip wherever it is.',
    words: {
      side: 'in the side',
      shoulder: 'in the shoulder',
      neck: 'in the neck',
      armhole: 'in the armhole',
      french: 'low in the side, slanting up',
      waist: 'at the waist',
      centreFront: 'at the centre front',
    },
  },
  dartSecond: {
    label: 'second bust dart',
    does: 'A wide dart lies better as two; the amount moved is measured in the side.',
    words: {
      none: 'none',
      shoulder: 'in the shoulder',
      neck: 'in the neck',
      armhole: 'in the armhole',
      french: 'low in the side, slanting up',
      waist: 'at the waist',
      centreFront: 'at the centre front',
    },
  },
  dartAs: {
    label: 'bust dart sewn as',
    does: 'Gathers draw up what the dart would fold. A style seam parts the front from shoulder or armhole over the bust to the hem.',
    words: { dart: 'a dart', gathers: 'gathers', seam: 'a style seam' },
  },
  opening: {
    label: 'opening',
    does: 'How you get in. What neck and waist still need is added by itself.',
    words: {
      auto: 'as needed',
      sideZip: 'zip in the left side',
      backZip: 'zip at the centre back',
      buttonedFront: 'buttoned front',
      neckSlit: 'slit at the back neck with a loop',
      keyhole: 'keyhole at the front neck with a loop',
      none: 'none yet',
    },
  },
  skirt: {
    label: 'skirt',
    does: 'What is sewn to the bodice at the waist. A straight skirt wants vents to walk in.',
    words: {
      straight: 'straight, its darts meeting those of the bodice',
      flared: 'flared from the hip, its darts meeting those of the bodice',
      quarterCircle: 'a quarter of a circle',
      halfCircle: 'half a circle',
      fullCircle: 'a whole circle',
    },
  },
  waistFinish: {
    label: 'waist seam inside',
    does: 'A facing covers the seam and holds the waist to its length.',
    words: { seam: 'the seam alone', facing: 'shaped facing over the seam' },
  },
  sleeveEnd: {
    label: 'sleeve end',
    does: 'A cuff takes up the fullness of the sleeve; where a hand does not pass it, a slit is added. A hem without a slit stays as wide as a hand.',
    words: { hem: 'hem', hemSlit: 'hem with a bound slit', cuff: 'cuff' },
  },
  neckFinish: {
    label: 'neck finish',
    does: 'A bias strip turns any curve; a shaped facing lies flatter on crisp cloth.',
    words: { biasStrip: 'bias strip', facing: 'shaped facing' },
  },
}
