/**
 * js-aruco2 is CommonJS that exports by `this.AR = AR` alone, which a bundler takes for a module
 * without exports. Its two files are given what Node gives them: `this`, and a default export.
 */
const FILE = /js-aruco2[\\/]src[\\/](aruco|cv)\.js/

/** @returns {import('vite').Plugin} */
export function arucoModule() {
  return {
    name: 'aruco-module',
    enforce: 'pre',
    transform(code, id) {
      if (!FILE.test(id)) return
      const required = code.includes("require('./cv')")
      const body = code.replace("require('./cv')", 'cvModule')
      return {
        code: `${required ? "import cvModule from './cv.js'\n" : ''}const own = {}\n;(function () {\n${body}\n}).call(own)\nexport default own\n`,
        map: null,
      }
    },
  }
}
