/** Input that cannot be used; the message is the one sentence she reads. */
export class Unusable extends Error {}
