/**
 * Lint rule: what she reads stands in a words file and nowhere else. Prose is told by two words in
 * one string, by a single word with a capital, and by letters in the text of a part. Citations are
 * the same in every language: they may stand in a `sources.ts`.
 */
const PROSE = /[A-Za-zÀ-ÿ]{2,}[’',;:.!?…]* [A-Za-zÀ-ÿ]{2,}/
const ONE_WORD = /^[A-Z][a-zÀ-ÿ]{2,}[.…:!?]?$/
const LETTERS = /[A-Za-zÀ-ÿ]{2,}/

/** Names of keys, of things of the platform, ends of ids, the product’s own name, marks of units. */
const NAMES =
  /^(Tapetrue|Enter|Escape|Tab|Home|End|Delete|Backspace|Shift|Arrow\w+|Page\w+|Helvetica|Source Sans 3|Source Sans 3 Variable|Brygada 1918|Brygada 1918 Variable|'DejaVu Sans', sans-serif|Letter|Tabloid|· Tapetrue|sans-serif|cm|mm|in|kB|MB|Exif|Left|Right)$/
/** Attributes of a part that hold no words. */
const NO_WORDS =
  /^(class|style|d|id|for|name|href|src|rel|type|role|points|transform|viewBox|media|sizes|autocomplete|inputmode|accept|preserveAspectRatio|stroke-\w+|data-.*|on\w+|aria-(describedby|labelledby|controls|live|current|owns|activedescendant))$/
/** Strings of the platform: lists of CSS, paths of SVG, fonts, permissions, kinds of objects. */
const PLATFORM = /^\[object \w+\]$|^\(prefers-|[{};=<>]|\bpx\b|^[MLCQAZ\d .,-]+$/

/** @type {import('eslint').Rule.RuleModule} */
const apart = {
  meta: {
    type: 'problem',
    messages: { prose: 'What she reads stands in a *.words.ts file: “{{text}}”.' },
    schema: [],
  },
  create(context) {
    /** @param {any} node @param {string} text */
    const tell = (node, text) =>
      context.report({ node, messageId: 'prose', data: { text: text.trim().slice(0, 60) } })
    /** @param {any} node */
    const forProgrammers = (node) => {
      for (let at = node.parent; at; at = at.parent) {
        if (at.type === 'NewExpression' && /Error$/.test(at.callee?.name ?? '')) return true
        if (at.type === 'ImportDeclaration' || at.type.startsWith('TSLiteral')) return true
        if (at.type === 'SvelteAttribute' && NO_WORDS.test(at.key?.name ?? '')) return true
        if (at.type === 'SvelteStyleDirective' || at.type === 'SvelteStyleElement') return true
        if (at.type === 'BlockStatement' || at.type === 'Program') return false
      }
      return false
    }
    /** @param {any} node @param {string} text */
    const look = (node, text) => {
      const said = text.trim()
      if (NAMES.test(said)) return
      if (ONE_WORD.test(said) || (PROSE.test(said) && !PLATFORM.test(said)))
        if (!forProgrammers(node)) tell(node, said)
    }
    return {
      Literal: (/** @type {any} */ node) => {
        if (typeof node.value === 'string') look(node, node.value)
      },
      TemplateLiteral: (/** @type {any} */ node) =>
        look(node, node.quasis.map((/** @type {any} */ q) => q.value.cooked ?? '').join(' 0 ')),
      SvelteLiteral: (/** @type {any} */ node) => look(node, node.value),
      SvelteText: (/** @type {any} */ node) => {
        const said = node.value.trim()
        if (LETTERS.test(said) && !NAMES.test(said) && node.parent?.type !== 'SvelteStyleElement')
          tell(node, said)
      },
    }
  },
}

export const words = { rules: { apart } }
