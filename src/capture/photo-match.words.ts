/** Why two photos of a muslin cannot be laid over each other, and what to do. */
export const MATCH_WORDS = {
  nobody: {
    earlier:
      'In the earlier photo no whole standing person was found, so the two cannot be brought to one scale by themselves. Mark the same two places in both.',
    later:
      'In the later photo no whole standing person was found, so the two cannot be brought to one scale by themselves. Mark the same two places in both.',
  },
  samePlace:
    'The two marks of one photo lie on each other. Draw them apart: one at the neck, one at the hip.',
  otherView: 'One photo is from another side. Choose two photos of the same view.',
}
