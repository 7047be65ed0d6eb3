/**
 * The mode of a build that is the page of the camera road and nothing else: no other language is
 * written into the app's own folder by it, and nothing is listed for use without a net.
 */
export const CAMERA_ROAD = 'camera-road'
