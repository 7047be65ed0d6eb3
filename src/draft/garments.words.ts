/** What each garment is, and what it is not for. */
export const GARMENT_WORDS = {
  blouse: {
    name: 'Draped-sleeve blouse',
    what: 'Woven, with a wide draped sleeve cut in one with the body and waist darts.',
    notFor: 'Not for set-in or raglan sleeves, knits or children’s nightwear.',
  },
  block: {
    name: 'Bodice block',
    what: 'The body’s own shape in paper, with side bust dart, waist darts and back shoulder dart. Sew it as a muslin and fit it first; other garments are drawn from it.',
    notFor: 'Not for knits, and no garment to wear: its ease is for standing and breathing.',
  },
  sleeveless: {
    name: 'Sleeveless blouse',
    what: 'Woven, close at the armhole, with side bust dart and waist darts; neck and armholes finished with bias strips or facings.',
    notFor: 'Not for knits, or for a sleeve: its armhole is too high and too close for one.',
  },
  sleeve: {
    name: 'Blouse with a set-in sleeve',
    what: 'Woven, with a sleeve set into the armhole of the fitted body. Fit the body first; the sleeve follows its armhole.',
    notFor: 'Not for knits, two-piece sleeves or collars.',
  },
  dress: {
    name: 'Dress with a waist seam',
    what: 'Woven and sleeveless, a fitted bodice with a straight, flared or circle skirt sewn on at the waist.',
    notFor: 'Not for knits, gathered skirts or linings.',
  },
}
