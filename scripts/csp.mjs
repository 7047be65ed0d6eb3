/**
 * Puts a Content-Security-Policy into the built page. Only the build carries it: the dev server
 * injects inline styles and opens a socket, which the policy rightly forbids.
 *
 * `wasm-unsafe-eval` lets the photo reader compile its WebAssembly; `blob:` covers photos she
 * picks and worker scripts. There is no other origin, because nothing is ever sent or fetched
 * elsewhere. Source of the directive names: W3C Content Security Policy Level 3.
 */
export const POLICY = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "media-src 'self' blob:",
  "worker-src 'self' blob:",
  "connect-src 'self'",
  "manifest-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ')

/** @returns {import('vite').Plugin} a plugin for the build; the dev server is left alone */
export function contentSecurityPolicy() {
  return {
    name: 'content-security-policy',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY },
        injectTo: 'head-prepend',
      },
    ],
  }
}
