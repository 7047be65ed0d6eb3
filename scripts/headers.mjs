/**
 * What a host sends with every file. `npm start` does; another host has to be told (README).
 * `frame-ancestors` counts only as a header, so the policy is sent as well as written in the page.
 * Sources: W3C Content Security Policy Level 3, Permissions Policy, Referrer Policy.
 */
import { POLICY } from './csp.mjs'

export const HEADERS = {
  'Content-Security-Policy': `${POLICY}; frame-ancestors 'none'`,
  'Permissions-Policy': 'camera=(self), microphone=(), geolocation=()',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
}
