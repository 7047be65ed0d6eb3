/** Handing a file to the share sheet of the device. */
export const SHARE_WORDS = {
  everything: 'Share everything …',
  garment: 'Share …',
  garmentLabel: (name: string) => `Share ${name} …`,
  photos: 'Share the photos …',
  pdf: 'Share the PDF …',
  readyLead: 'Ready to be shared.',
  ready: 'That took a while, so the browser asks for one more press of the same key.',
  refusedLead: 'Not shared.',
  refused: 'The browser did not hand it on. Save it to a file instead, and send that.',
}
