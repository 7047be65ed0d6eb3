/** What is said while pieces are thrown: the scale, the light, the crosses of a field. */
export const PROJECTOR_WORDS = {
  noNumber: 'no number',
  outside: (said: string, least: string, most: string) =>
    `The crosses would lie ${said} apart; between ${least} and ${most} can be used. Measure from cross to cross where the light falls.`,
  drawnOut: (percent: string) =>
    `The picture is drawn out by ${percent} % one way. Set the projector square to the table, or its picture back to its own shape, and measure both again.`,
  narrow: (width: string, height: string, least: string) =>
    `The light covers ${width} by ${height}; at least ${least} either way is needed. Move the projector away and measure again.`,
}

export const FIELD_WORDS = {
  whole: 'The whole piece is thrown at once.',
  field: (name: string, at: number, of: number) => `Field ${name}, ${at} of ${of}.`,
  lay: (field: string, crosses: readonly string[]) =>
    `Move the cloth until the chalk of ${field} lies under ${crosses.join(' and ')}.`,
  chalk: (crosses: readonly string[], field: string) =>
    `Chalk ${crosses.join(' and ')} for ${field}.`,
  pin: 'A cross that lies on the piece is a pin instead.',
}
