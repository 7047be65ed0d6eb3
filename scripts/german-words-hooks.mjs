/** Resolves NAME.words.ts to NAME.words.de.ts, but for the sister itself, which asks for its types only. */
export const resolve = (specifier, context, next) =>
  next(specifier.replace(/\.words\.ts$/, '.words.de.ts'), context)
