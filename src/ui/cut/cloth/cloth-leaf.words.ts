/** The leaf of the cloth: what she says of it, the layout, amounts, lists, the print run. */
export const CLOTH_LEAF = {
  title: 'Cloth',
  nothing: 'Nothing can be laid out.',
  noPages: 'No pages.',
  noLayoutYet: 'There is no layout yet to print.',
  savePlan: 'Save the cutting plan (PDF)',
  planSaved: 'The cutting plan is saved.',
  saved: (name: string, parts: readonly string[]) => `Saved as ${name}. ${parts.join('; ')}.`,
  part: (words: string, from: number, to: number) =>
    from === to ? `${words}, page ${from}` : `${words}, pages ${from} to ${to}`,
  ask: (round: number) =>
    `Making the file puts round ${round} on paper: it stays as it is from then on.`,
  run: 'All of it in one print run',
  runHow:
    'A list of the pages, the pieces at true scale with the finishes for cloth, the steps, this cutting plan with its lists, and the sewing plan.',
  saveAll: 'Save everything (PDF)',
}

/** What she says of her cloth. */
export const WISHES_WORDS = {
  title: 'The cloth',
  kind: 'Kind',
  another: 'Another width to compare',
  enough: (widths: number) => `${widths} widths stand side by side already. Leave one out first.`,
  leaveOut: (width: string) => `Leave out ${width}`,
  lies: 'It lies',
  shortest: 'whichever is shortest',
  oneWay: 'Nap, shading or a print with an upper end',
  oneWayMeans: 'All pieces lie one way.',
  repeat: 'Stripes, checks or a repeat to be matched',
  repeatAlong: 'Repeat along the cloth',
  repeatAcross: 'Repeat across the cloth',
  none: 'none',
  matchedAt: 'Matched at',
  border: 'A border along one selvedge',
  borderHow:
    'Hems lie on it, so every piece lies across the cloth, in a single layer. The repeat along the cloth is that of its motif.',
  borderDepth: 'Depth of the border',
  borderHem: 'Finished hem from its selvedge',
  shrinkage: 'Shrinkage',
  shrinkAlong: 'Along the cloth',
  shrinkAcross: 'Across it',
  shrinkHow:
    'Not known: cut a square, measure it, wash and dry it as the garment will be, measure again.',
  squareBefore: 'Square before',
  alongAfter: 'Along, after',
  acrossAfter: 'Across, after',
  rest: 'Selvedge, spare, price',
  selvedge: 'Selvedge, not used',
  spare: 'To spare',
  spareUnit: (least: string) => `%, ${least} at least`,
  price: 'Price',
  priceUnit: { metre: 'a metre', yard: 'a yard' },
  soldBy: 'Sold by the',
  sold: { metre: 'metre', yard: 'yard' },
  outside: (label: string, min: number, max: number, example: number) =>
    `${label} goes from ${min} to ${max}. Write a number, as in ${example}.`,
}

export const LAYOUT_WORDS = {
  title: 'Layout',
  width: 'Width of the cloth',
  looking: 'Looking for a shorter layout.',
  lookingLonger: 'Looking longer for a shorter layout.',
  stopped: 'Stopped. The best layout found stays.',
  stoppedEmpty: 'Stopped before a layout was found.',
  again: 'Lay the pieces out',
  found: 'This is the shortest layout found.',
  kept: (date: string) => `This is the layout kept on ${date}.`,
  stale: (date: string) => `The layout of ${date} is out of date.`,
  staleWhy: (length: string, manner: string, drawn: boolean) =>
    `It was for other pieces or another cloth: ${length}, ${manner}. The one below is made anew from what stands now${drawn ? '; how it lay then is drawn after it, dashed' : ''}.`,
  then: (date: string) => `How it lay on ${date}`,
  thenDrawing: (pieces: readonly string[]) =>
    `The earlier layout, ${pieces.length} pieces: ${pieces.join(', ')}. Nothing is cut by it.`,
  buy: (amount: string) => `Buy ${amount}`,
  /** After what is bought. */
  lies: (n: {
    readonly price?: string
    readonly pieces: number
    readonly manner: string
    readonly length: string
    readonly width: string
  }) =>
    `${n.price === undefined ? '' : `, ${n.price}`}. The ${n.pieces === 1 ? 'piece lies' : 'pieces lie'} ${n.manner} on ${n.length} of a cloth ${n.width} wide.`,
  drawing: (pieces: readonly string[]) =>
    `Layout, ${pieces.length} pieces: ${pieces.join(', ')}. Each place stands in the list.`,
  none: 'No layout.',
  noneWhy: 'It could not be made here. Choose another width or another manner to try again.',
  doNotLie: 'The pieces do not lie on this cloth.',
  laying: 'The pieces are being laid out.',
  search: 'Search on this width',
  stop: 'Stop here',
  longer: 'Look a minute longer',
  others: 'The other ways to lay it',
  other: (length: string, more: string) => `${length}, ${more} more.`,
  from: (section: string, start: string | undefined) =>
    `${section}${start === undefined ? '' : `, from ${start} on`}.`,
  bothSelvedges: (border: boolean) =>
    `Both long edges are selvedges.${border ? ' The border ends at the dotted line.' : ''}`,
  fold: (standing: boolean, upper: string | undefined) =>
    `${standing ? 'Fold at the left' : 'Fold along the foot'}, ${upper === undefined ? 'both selvedges opposite' : `upper layer ${upper} wide, dotted`}.`,
  foldAcross: (standing: boolean) => `The fold lies ${standing ? 'at the foot' : 'at the right'}.`,
}

export const WIDTHS_WORDS = {
  title: 'Widths side by side',
  unit: { cm: 'all in cm', inch: 'all in inches' },
  caption: 'What to buy on each width',
  width: 'Width',
  lies: 'Lies',
  used: 'Used',
  metres: 'Metres',
  yards: 'Yards',
  price: 'Price',
  laying: 'being laid out',
  notLaid: 'not laid out',
}

/** "I have 2.30 m of 115". */
export const HAVE_WORDS = {
  title: 'Cloth you have',
  have: 'I have',
  example: { cm: '2.30 m', inch: '2 1/2 yd' },
  width: 'of a width of',
  of: (length: string, width: string) => `${length} of ${width}`,
  fits: 'Does it fit?',
  trying: 'The layouts are being tried.',
  tried: 'Ways that have been tried',
  sayHowMuch: 'Say how much you have.',
  stop: 'Stop',
  notTried: 'Not tried.',
  notTriedWhy: 'The layouts could not be made here. Ask again.',
  itFits: (cloth: string) => `It fits on ${cloth}.`,
  over: (manner: string, left: string) =>
    `The pieces lie ${manner}; ${left} are left over after washing and straightening.`,
  doesNot: (cloth: string) => `It does not fit on ${cloth}.`,
  missing: (length: string, manner: string) => `${length} are missing, ${manner}.`,
  tooWide: 'A piece is wider than the cloth.',
  ways: 'What would do, one by one',
  pairs: 'Nothing does alone; two together would',
  then: (manner: string, length: string) => `Then ${manner} ${length} suffice.`,
  noWay: (by: string) =>
    `Neither facings crosswise, pieced or from other cloth, nor a seam at the centre back, nor a garment shorter by ${by} would do, alone or two together.`,
  /** In words of its own, and as a clause of a sentence that names two. */
  shorter: {
    sleeveLength: (by: string) => ({
      words: `Make the sleeve shorter by ${by}.`,
      clause: `make the sleeve shorter by ${by}`,
    }),
    lengthBelowWaist: (by: string) => ({
      words: `Make the body shorter by ${by}.`,
      clause: `make the body shorter by ${by}`,
    }),
    both: (by: string) => ({
      words: `Make the sleeve and the body shorter by ${by} each.`,
      clause: `make the sleeve and the body shorter by ${by} each`,
    }),
  },
}

export const LISTS_WORDS = {
  cutList: 'Cut list',
  pieces: (count: number) => `${count} ${count === 1 ? 'piece' : 'pieces'}`,
  piece: 'Piece',
  fromCloth: 'From the cloth',
  interfaced: (cut: string, interfacing: number) => `${cut}; ${interfacing} of interfacing`,
  marks: 'Marks',
  inside: 'Inside its cutting line',
  noMarks: 'Nothing but the notches.',
  besides: 'Besides the cloth',
  strips: 'The strips lie in the layout, so no bias strip need be bought.',
  amount: 'How the amount comes about',
  onWidth: (width: string) => `on ${width}`,
  toBuy: 'to buy',
}
