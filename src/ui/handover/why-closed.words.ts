/** Why a meeting of two devices ended, each with what to do next. */
export const NO_WAY: string =
  'This browser cannot join devices directly, or the page was not opened over https. Hand over a file instead: “Save everything to a file” on the rail.'
export const NO_NETWORK: string =
  'This device is in no network. Join both devices to the same wireless network, or switch on the phone’s own hotspot and join the other device to it; then begin again.'
export const NOT_JOINED: string =
  'The two devices did not find each other. They have to be in the same network, and some networks (guest networks above all) keep their devices apart. The phone’s own hotspot with the other device joined to it mostly works. Nothing was sent.'
export const LOST: string =
  'The connection is gone: one device fell asleep, left this page or left the network. What has arrived is kept. Begin again on both; a file that was cut off goes on from where it stopped.'
export const DIFFERENT: string =
  'Then these two devices are not joined with each other, and the connection was closed. Nothing was sent. Begin again, and read each code from the other screen itself.'
