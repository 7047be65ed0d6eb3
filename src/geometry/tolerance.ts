/** How close is close, in millimetres. One place, so that no room invents its own. */

/** Two points nearer than this are one point. Far under a pencil line (0.3 mm), far over rounding. */
export const SAME_POINT = 1e-6
/** Curves are measured to this; she cuts to about 1 mm. */
export const LENGTH_ERROR = 1e-3
/** Largest distance between a curve and the chords that stand for it. */
export const FLATTEN_ERROR = 0.01
