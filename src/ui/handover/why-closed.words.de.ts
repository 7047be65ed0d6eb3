export const NO_WAY: string =
  'Dieser Browser kann Geräte nicht direkt verbinden, oder die Seite wurde nicht über https geöffnet. Gib stattdessen eine Datei weiter: „Alles in eine Datei sichern“ an der Stange.'
export const NO_NETWORK: string =
  'Dieses Gerät ist in keinem Netz. Bring beide Geräte ins selbe WLAN, oder schalte den Hotspot des Telefons ein und verbinde das andere damit; dann beginne neu.'
export const NOT_JOINED: string =
  'Die beiden Geräte haben sich nicht gefunden. Sie müssen im selben Netz sein, und manche Netze (vor allem Gastnetze) halten ihre Geräte auseinander. Mit dem Hotspot des Telefons, mit dem das andere Gerät verbunden ist, klappt es meistens. Nichts wurde geschickt.'
export const LOST: string =
  'Die Verbindung ist weg: Ein Gerät ist eingeschlafen, hat diese Seite oder das Netz verlassen. Was angekommen ist, bleibt. Beginne auf beiden neu; eine abgebrochene Datei geht dort weiter, wo sie aufgehört hat.'
export const DIFFERENT: string =
  'Dann sind diese beiden Geräte nicht miteinander verbunden; die Verbindung ist geschlossen. Nichts wurde geschickt. Beginne neu und lies jeden Code vom anderen Bildschirm selbst.'
