/** In this tab the example of the name kept under this key was being looked at: a reload shows it again. */
export const LOOKING = 'tapetrue.example'
