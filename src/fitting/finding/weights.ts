/**
 * Weights of the finder, in tenths: a feature, then the complaints it speaks for or against.
 * Written by scripts/finding/learn-weights.ts from our own phrases; not edited by hand.
 */
export const WEIGHTS = `N1 N2 N3 N4 N5 N6 N7 N8 SH1 SH2 SH3 SH4 SH5 SH6 SH7 SH8 B1 B2 B3 B4 B5 B6 B7 B8 B9 B10 B11 B12 B13 B14 B15 A1 A2 A3 A4 A5 K1 K2 K3 K4 K5 K6 K7 W1 W2 W3 W4 W5 W6 W7 W8 W9 W10 W11 W12 L1 L2 L3 L4 L5 D3 L6 L7 L8 L9 D1 D2 D4 D5 D6 D7 D8 X1 X2 X3 X4
!loose L5+4 D3+4
!pucker L3-3 L5-3 L6+5 L7-3
!rise L5+4 D3+4
!show W10-3 L5+4
1apex N5-4 SH3-3 SH4-3 SH7-3 SH8-3 B2-4 B3+4 B4+8 B5+7 B6+11 B8-4 B9-4 B10-6 B11-6 B12-4 B14-4 B15-6 A4-5 A5-4 K1-3 K4-3 K6-3 W4-4 W10-3 L1-3 L2-3 L3-3 D4-3 D6-3 D7-3 X2-4 X3-5 X4-4
1arm N2-4 SH1-3 SH5+5 B8+5 B10-5 B11-3 A1+6 A4-4 K1+4 L2-5 L4-9 L6-3 D2-4 D4+3 D7-9
1armhole SH3+4 SH4+4 SH7+8 B8+4 A1+11 A2+9 L6-4 L7+9
1back N7+4 A4+7 K1+5 K2+4 K3+7 K4+5 K5+6 L4+5
1backArmhole A3+11 A4+6
1backHem N7+5 B2-9 K3+14 W1-4 W7-3 W9-5 W10-6 W11-7 D3-7 L9-3
1backWaist K2+4 K3+9 K6+13 W1-3 W4-4
1blade K1+10 K2-3 K4+7 K5+8
1bust SH3+3 B1+15 B3+11 B13+5 B15-5 W8-3 X3-3
1bustDart B3+4 B4+6 B5+11 B6+10
1centre N4-4 N8-3 SH8-3 B6-5 B14-3 K2+3 K5-4 W1+7 W2+6 W3+11 W4+13 W5+3 L1-3 X1+9 X2-3 X3-6
1chest B1+4 B3+4 B6-3 B10+6 B11+6 B12-4
1collar N1+7 N2+5 N4-4 N5+7 N7-3 N8-4
1collarbone SH8+6 B10-3 L9-3 X1-4 X3-4
1cup B3+6
1cutInSleeve L3-3 D3+10 D1+4 D2+7 D5+13 D7+4
1dart B4+6 B5+7 B6+10
1dartTip B4+5 B5+8 B6+5 B7+12 W12-6
1elbow B4-3 B6-3 A5-4 L3-4 L8+21 L9-3 X2-4
1fishEye B7-4 W12+16
1front N2+4 N8-3 B2+9 B10+6 B11+7 B14+14 K2-3 K6-4 W1-3 W2-4 W5-5 W6-3 L4+9 D5-6 X3-4
1frontArmhole B8+11 B10+6 B11+6 A1-5 A3-4 A5+12 L8-4
1frontHem N7-4 B2+7 K3-9 W1-4 W6-4 W9-5 W10+10 W11-3 D3-6 L9-3
1frontNeck N1+14 N2+7 N3-4 N5-5 N6-5 N7-4 B2+4 B8-3 B10-4 B13-4 W1-3 X3-5
1frontWaist B2+10 B14-4 K2-5 K3-6 K6-7 W3-3 W4-3 W5+12 D3-4
1hem W9+4 W11+19 L9-5
1hip W2-6 W9+14 X2-4
1lowerBack A4-3 K2+12 K6+7
1nape N3+12 N4+7 N8+7 K7+3
1neck N1+5 N2+10 N5+10 K7+4
1neckSide N2+8 N5+5 N6+7
1overarm N2-3 N4-3 N7-4 SH4-5 SH5-5 B1-3 B2-5 B11-3 A1-3 K1-3 K2-3 K3-4 W1-6 W3-4 W7-4 L1-7 L2-4 L3-7 L4-5 D3-3 L6-3 L7-5 L8-4 L9-6 D1-3 D2+13 D5+6 D6-3 D7-5 D8-4 X2-4
1placket B1-5 B12+22 D6-3
1seat K2+5 W9+14 W11+4
1shoulder N5+5 N7-3 SH1-6 SH2-4 SH3+10 SH5-4 SH6-4 SH7-5 SH8+3 B14-3 L1-4 D3+3 D1+5 X3-3
1shoulderLength N2-3 N5-4 N6-3 SH1-5 SH2-8 SH3+9 SH4+5 SH5-5 SH6-6 SH7-7 SH8-3 B2-4 B10-4 B11-4 B14-4 A5-4 K1-4 W3-3 L5-3 D3-3 L7-3 D2-4 X2-5
1shoulderSeam N6+7 SH3+6 SH5+8 SH6+14 SH7-4
1shoulderTip N6-3 SH1+13 SH2+13 SH3-5 SH7+5
1side SH8+5 B8+9 K7-3 W6-3 L4+4 D3+6 L9-3 D6-8
1sideSeam N8-3 W6+12 W7+11 W8+14
1skirt W9+7
1sleeve K1-3 L1+3 L2+3 L3+8 L4+4 L5+4 D3-4 L6+6 L8+4 D1+8 D5+6 D6+6 D7-6
1sleeveCap L1+10 L2+15 L6+13 L7+8
1sleeveHem L3-4 L9+13 D2-4 D6+8 D7+16 D8+13
1sleeveSeam SH3+10 SH4+5 L1-4 L2-3 L4+9 L8-6 L9-4 D1-3 D2-5 D5-3 X1-4 X2-3
1spine N3-3 K7+8 W8-4
1throat N1-4 N2+9 N3-4 N5-4 N6-3 N7+6 N8-4 A4-3 X3-4
1tummy W5-4 W10+19
1underBust B5-5 B13+25 B14+11 X2-3 X3-6
1underarm SH1-4 A1+13 A2+11 L1-4 L4-4 D4+14
1upperArm SH3-4 SH7+4 B1-3 A5-3 L3+17 D2-9 D7-6 X1-6 X2-4
1upperBack A4+11 K1+7 K5+8 K6+4 W4-3 X3-4
1upperChest B9+12 B10+7 B11+11 B15+8
1vNeck N1+10 N2+6 N3-4 N5-4 N6-5 N8-3 SH1-3 B15-3 X3-4
1waist K6-4 W1+8 W2+11 W3+14 W4+15 W5+4 W9-3
1waistDart B4-7 B5-7 B6+3 B7-6 B13+6 B14-5 W1-4 W2-5 W3+7 W12+4 X2-4
1wrist W11-7 L9+8
Armhole SH1+4 SH7+5 B8+8 A1+13 A2+11 A3+4 A5+5 L7+6 D4+7
Armhole&Away SH3-4 SH7+8 B8+16 B12-3 A1-7 A2+3 A3+6 L7-3 D4-4
Armhole&Back B8-5 A3+17 A4+4 K4+3
Armhole&Bust B1-5 B3-5 B8+9 B11+3 B15-3 A1-3 A5-4 L7-3
Armhole&Chest B1-3 B11+4 A5-4
Armhole&Crooked SH7+6 SH8+4 A5-7 L7-3 D4-5
Armhole&Dart SH1-6 B4-6 B6+7 B7-8 B8+3 A1-7 A2-5 A5-4 L1-4 D4-5
Armhole&Down SH3-3 SH7-4 SH8-4 B8-4 A1-9 A2+16 W2-4 L6+3
Armhole&Folds B10+4 A1-6 A5+6 D4+11 D5-3
Armhole&Hem A1-3 A2+6 W9-3 W11-5
Armhole&Hip A2+6 A3+4 W9-3 W11-3
Armhole&Loose B8+5 A1-6 A2+11 A3+5 A4-3 A5-5 L8-3 D4+11 X3-7
Armhole&Lumps B8-3 A1-7 A2-5 L6-7 L7+10
Armhole&Neck N5-4 SH1+9 B15-3 A2-5 L1-3 D4-3
Armhole&Shoulder SH1-6 SH2-4 SH3+4 SH4+7 SH7+12 A1-9 A2-4 L1+3 L7-4
Armhole&Sleeve A2-6 L1+5 L3-5 L7+9 D5-4
Armhole&Tight SH4+7 B11+4 A1+19 A2-5 A5+5 L1+5 L3-3 L8-4 X2-3
Armhole&Travels N5-4 SH1+3 SH4-3 B10+3 A1-3 A5-5 L4+3 D5-3
Armhole&Up SH7-4 B2-5 B6-5 A1+9 A2-8 K3-4 W1-5 L1-6 D3-3 L6-4 L9+6 D4-6
Away N1+4 N2-3 N5-3 N6+5 SH1+4 SH5-3 B8+6 B12+5 A3+5 W3-3 D1+10
Away&Back B8-5 A3+14
Away&BackNeck N3+11 N4-4
Away&Bust B1-6 B6-3 B12+3 B13+5
Away&Chest N1+7
Away&Crooked A1+5 K1-4 L3-4 D1-4
Away&Dart B5-7 B6-5 B7+5 W4-5 W12+11 D1-4
Away&Down N1-4 B3-4 B5+4
Away&Folds SH1-6 SH2+3 B14-3
Away&Hem B2-3 A3-3 K3+3 W10+7 W11-6 L6-3 D1-4 D8+3
Away&Hip W9-3 W12+4
Away&Loose N1-4 W4-3 D6+4 X3+4
Away&LowBack B2+5 A3-3 K3-7 K6+8 W4-4 W5-5
Away&Lumps SH7-3 B4-7 B7+6
Away&Neck N1+12 N2-4 N3+6 N6+12 SH1-4
Away&Shoulder N1-4 N5-4 N6+6 SH1+12 SH2-4 SH3+5 SH4-4 SH5-5 SH6-4 D1+5
Away&Sleeve N6-4 SH3-5 B8+4 B12-4 A3-3 K1-4 L1-6 L2+6 L3-8 L4-5 D3-5 L6-3 L9-6 D1+16 D5-6 D6+5
Away&Tight N1-4 B1-5 B4+4 B12+4 W3-6 W4+4 D1-5 D7+6
Away&Waist N1-4 N6-3 B5-3 B8-5 A3-4 K2-8 K3-7 K6+8 W1-7 W2-6 W3-10 W4+10 W10+6 D1-4
Back SH5+5 A3+6 A4+10 K1+11 K3+10 K4+4 K5+8
Back&BackNeck N2-3 N3+5 K3-4
Back&Bust SH5-3 B1-5 B15+4 K1-5 K3-4 K5-3 K6-3 W1+5 W2-4 W3-4
Back&Crooked N7-4 K1-8 K4+7 K5-3 W6-3 W7+4 X1+4
Back&Dart B7-3 W12+5
Back&Down N3-4 SH3-4 SH8-4 A4-5 K1-8 K3-9 K5+14 W2-8 W5-3 W11+3 L9+5 D5-4 D8-4
Back&Folds N4+7 SH5-3 K1-6 K2+6 K3-3 K5+12 L4+4 D5+4
Back&Hem SH8-3 A4-3 K1-3 K3+8 K5-4 W7+3 W9-4
Back&Hip K1+3 W9-5
Back&Loose A3+6 A4+15 K3-5 K5+5 K6+4 W4-6 X3-5
Back&LowBack K2+5 K3-4
Back&Lumps B1-4 B4-3 B7-4 B15+4 A4-4 K1-4 K2+3 K3-5 W12+4
Back&Neck N2-6 N3+4 N4+5 K3-4
Back&Shoulder N4+3 N6-4 SH3-7 SH4-6 SH5+11 SH6-7 K3-5
Back&Sleeve N7-3 SH3-4 B10-3 A4+4 K2-4 K3-4 K5-9 L2-4 L3-4 L4+5 L6-4 L9+6 D1-3 D7-3 D8-4
Back&Tight A4-7 K1+21 K4+11 K5-7 X2-3
Back&Travels N7+4 K3-4 W7+5 L4-4 X1+4
Back&Up N3-3 SH5-4 B2-7 A4-5 K1-5 K3+17 K4-4 K5-7 W9-4 D3-3 X1-3
Back&Waist N3-5 B2-4 A4-10 K1-5 K2+5 K4+3 K6+8 W1+3 W3-8 W4-8
BackNeck N3+13 N4+7 N6-3 N8+6 K7+17
BackNeck&Belly N4+3 W10-3 W12-4
BackNeck&Bust N3+4 B6-4 K7-4
BackNeck&Crooked K7+5 W8-4 X1-4
BackNeck&Dart B6-5
BackNeck&Down N8+3 K5+3
BackNeck&Folds N3-5 N4+13 N8-3
BackNeck&Loose N2-7 N3+11 K7-5
BackNeck&Lumps N2-3 N3-3 K7+6
BackNeck&Neck N3+13 N4+7 N8+6 K7+8
BackNeck&Shoulder N1-6 N2-4 N5+8 SH3-6 SH4-4 K7-5
BackNeck&Tight N3+5 K7+7 X2-4
BackNeck&Travels N2-3 N3-4
BackNeck&Up N2-4 N3-7 N7-3 N8+13 B2-5 K3-5 D3-3
Belly B2-5 B7-3 W10+22
Belly&Bust B1+4 B3+4 W10-6
Belly&Crooked K7+4 W10-4 L5+4
Belly&Dart B4-3 B5-3 W10-7 W12+6
Belly&Down B5-4 B7-3 W1-3 W2-3 W3-4 W5+3
Belly&Folds B1-3 W10+4
Belly&Hem W10+5
Belly&Loose B1-5 B2+4 B3+6 W6+3 W10-3
Belly&Lumps W12+6
Belly&Neck N4+3 W10-3 W12-4
Belly&Tight W10+15 X2-3
Belly&Up W10+7
Belly&Waist W1-6 W2-5 W3+5 W4-6 W10-4
Bust B1+11 B3+18 B4+5 B5+5 W1-4 W2-4
Bust&Chest SH6+3 B3-4 B11+5 B15-4 A5+3
Bust&Crooked B1-3
Bust&Dart B1-4 B4+7 B5+4
Bust&Down B1-3 B5+6 B6-4 W5-4
Bust&Folds N4-3 B3+12 B4-3 B5-4 B8+3 B13-4
Bust&Hip B1-3
Bust&Loose B1-10 B3+16 B5-5 B6+7 X3-7
Bust&Neck N2-6 B1-6 B15+9
Bust&Shoulder N5+4 SH2-4 SH3+3 SH5-6 B1-9 B2-4 B3-4 B15+7 D2-4
Bust&Sleeve B1-4 B3-6 B11-3 A5+5 L2-4 L3+5
Bust&Tight B1+14 B15+6
Bust&Travels B1-6 B5-4 B6+4
Bust&Up SH3-4 SH4+3 B1-3 B2+5 B3-6 W1-5
Bust&Waist B1-5 B2+4 B3-5 W3+4 W9-3
Chest B5+3 B9+16 B10+8 B11+11 B15+5
Chest&Crooked SH8+6 B9-5 B11-5 B15+4 L9-4 X1-4 X3-3
Chest&Dart B5+9 B7-8 B9-7 B11-5
Chest&Down B1-4 B9+14 B10-4 B11-7 B14-7 W2-4
Chest&Folds SH2+4 B9+12 B10+4 B11-6
Chest&Loose SH6-4 SH8+4 B1-3 B9+8 B10+11 B11-4 B15-3 X1-3 X3-5
Chest&Lumps B4-5 B5+5 B7-4
Chest&Neck N1+6 B9-4 B10+3
Chest&Shoulder SH2+10 SH3-5 SH5-4 SH6+6 B1-4 B9-9 B11-5 B15-3 D2-3
Chest&Sleeve B3-4 B9-3 A4-5 A5+5
Chest&Tight B9-11 B10-8 B11+18 B15+9 X2-3
Chest&Travels N7-3 SH6+5 B5-4 B9-4 B10-3 B11-4
Crooked SH8+4 W4-3 W8+5 L3-3 L4+5 L9+7 D7-4 X1+17
Crooked&Dart B4-5 B6+3
Crooked&Down SH8-4 A2+3 W5+3 L9-6 D8+6
Crooked&Folds L4-6 L9-4 D4-5 D5+7 D8-4
Crooked&Hem B2+3 W9-5 W11+11 X1-7
Crooked&Hip W9-6 W11+5 L9-3
Crooked&Loose N8-4 B9-3 K5-3 L4-3 D5+5 D8-6 X1+5 X3-7
Crooked&LowBack K6+3
Crooked&Lumps N8-5 B4-4 B7+6 W12-5 X1-3
Crooked&Neck N1-5 N2-5 N5-5 SH7-5 A5+3 X1-3
Crooked&Shoulder N5-3 N8-6 SH3-7 SH4-5 SH5+5 SH6+4 SH8+9 X1-4
Crooked&Sleeve L4+12 L8-3 L9+11 D6-3 D7-4 D8+6 X1-8
Crooked&Tight SH7+5 K4+4 L9-6 D8+5
Crooked&Travels SH8-3 W7-4 L4+6
Crooked&Up B2+4 K1-6 W11-6 L3+3 L9-4
Crooked&Waist W2-3 W4-5 W5+8
Dart B4+12 B5+13 B6+14 B7+9 W12+8
Dart&Down B4+15 B5+7 B6-10 B7-6 W2-9 W12+6
Dart&Folds N4-3 SH8-4 B4-9 B6-8 B7+14 A5-6 K2-4 W12-3
Dart&Hem B7-4 W12+5
Dart&Hip B4-3 B7-4 W9-5 W12+8
Dart&Loose SH1-3 SH7-3 B3+5 B4-9 B5-5 B6+3 B7+4 B10-3 B13-5 A4-4 K6-3 W3-3 W4-4 L7-3 X3-8
Dart&LowBack K6+5 W3-4
Dart&Lumps B4+4 B5-3 B6-3 B7+10 W12+9
Dart&Neck N1-5 N2-5 N5-3 B4-4 B6+4 B7-5
Dart&Tight B1-5 B3-3 B6+5 B7+3 W3+5 W12-6 X2-4
Dart&Travels B4+4 B5-6 B6+5
Dart&Up B2-4 B4-8 B5+11 B6-3 B7-5 A1-5 K3-3 W1-4 W12-3
Dart&Waist B4-6 B5+5 B6-7 K6+3 W1-4 W2-9 W3-6 W4-7 W12+6
Down SH3+5 B2-3 B13-3 B14+8 A2+6 A4-4 A5-3 K1-3 K3-4 K5+5 W1-5 W2+10 W5+5 W11+4 D5-3
Down&Folds SH2-4 SH3-4 SH8-6 B2-4 B3-4 B5-3 B10+5 B15-3 K2+5 K5-5 L4-6 D5-4
Down&Hem N7+4 K3-7 W9-6 W11+11
Down&Hip N7-4 N8+4 W7-3 W11+4
Down&Loose N1-8 N8+5 B13+4 A2-5
Down&LowBack K3-4 K6-5 W2-6
Down&Lumps B5-4 B7-4 W10-4 W12+5
Down&Neck N2-8 N5-3 N8+8 SH7+3 B14-4 A2-3 W5-3
Down&Shoulder N5-4 N6-4 SH2+7 SH3+7 SH4-6 SH5-6 SH6-7 W5-3
Down&Sleeve SH2-4 SH3+11 B10+4 B14-6 A2-5 K5-5 W2-4 W5-4 W11-5 L1+6 L2+7 L3-5 L4-8 L6-5 L7-7 L9+6 D6-4 D7-4 D8+3
Down&Tight N7+4 B8+4 A2-4 K1-4 D4+3
Down&Travels N8+4 W2-5 X1-3
Down&Up N7+5 B3-3 W1-5 L9-6 D8+5
Down&Waist SH3-4 B2-4 W1-4 W2+8 W3-6 W4-4 W5+11
Folds N4+3 SH8+5 A5+10 K2+5 D5+3
Folds&Hem W9-5
Folds&Hip W2-7 W9+7
Folds&Loose B9+3 K2+3 K5+6 K6-3 X3-4
Folds&LowBack K2+15 K5-4 K6+4
Folds&Lumps B4-7 B7+4 L6-6 D5+5
Folds&Neck N3-5 N4+14 N5-3 SH1+5 SH2+4 K5-3
Folds&Shoulder N2-3 N6-6 SH1-5 SH2+7 SH3-3 SH4-5 SH5-4 B9-4 L2+6
Folds&Sleeve SH2-3 SH3-3 SH8-5 B14-4 A5-4 L2+8 L4+8 L6+3 L7-4 D5+9
Folds&Tight B1-3 K5-3
Folds&Travels SH1+5 B10+4
Folds&Up N4+6 SH8-5 B3-3 B5+4 B9-3 K2-6 K5-4 W1-3 W2-3 W5+4
Folds&Waist K2+10 K5-8 W1-4 W2+8 W5-3
Hem SH8-3 K3+6 W9+5 W10+7 W11+14 X1-4
Hem&Hip W6+3
Hem&Loose W10-4
Hem&Lumps N8-4 SH6-3 B2-3 B4-3 B7-4 A5-3 W6-4 W10+5 W11-4 W12+4
Hem&Neck N7+4 W9-3
Hem&Sleeve W11-11 L1-5 L2-4 L6-4 D1-5 D2+3 D5-5 D6-3 D7-5 D8+12
Hem&Tight W11-6 L1-3 D2+5 D8-4
Hem&Travels W6+4
Hem&Up N2-4 N7+4 B2+4 B5-3 K3+5 W1-5 W9+4 W10+5 L9-5
Hip W7+3 W9+19
Hip&Loose SH5-4 B3-4 B9-3 A2-3 K2+7 K5-3 W7-4 W9-3 W12-3 L6-3 L7-4 D4-3 X3-4
Hip&Lumps B3-3 B4-3 B7-5 K2+6 W9-8 W12+6 L6-3 L7-3
Hip&Neck W9-4
Hip&Shoulder N7+4
Hip&Sleeve K1+3 L4-5
Hip&Tight W9+16
Hip&Travels SH5-3 W6-3 W7+5
Hip&Up K3+4 W9+7 D3-4
Hip&Waist W1-8 W2+5 W3-9 W5-4 W12-4
Loose SH2-3 B3+5 B13+4 A4+5 W2-3 W3-4 W4+7 X3+17
Loose&LowBack K2+4 K3-7 K6+9 W4-6 X3-4
Loose&Lumps SH7-3 B7-3 K2+6 W9-5 W12-4 L6-5 L7-4 X3-3
Loose&Neck N1+10 N2-3 N3+7 N5+10 N8+4 X3-6
Loose&Shoulder N5-5 SH1+15 SH2-13 SH3+8 SH5-6 X3-6
Loose&Sleeve A2-3 L1-5 L2+10 L9-3 D5-4 D6+9 D7-4 X3-6
Loose&Tight SH4+3 B1-7 B10-5 B11+3 L8-3 X2+5 X3-5
Loose&Travels L4-6 D5+6 X3-3
Loose&Up N1-3 N3-3 N7+6 B2+4 B3-4 W10-5 D3+4 X3-3
Loose&Waist A4-6 K3-4 K5-5 K6+11 W1-6 W2-6 W4+14 X3-6
LowBack K2+18 K3+5 K5-4 K6+11 W1-3 W2-4 W4-5 D7-4 D8-3
LowBack&Lumps K2+6 K6-4
LowBack&Tight K6+6
LowBack&Travels W7+4
LowBack&Up B2-10 K2-7 K3+13 K6-12 W1-9 D3-4
LowBack&Waist K2+3 K3+7 K6+9 W4-4
Lumps SH1-4 SH7+3 B4+11 B5-4 B6-4 B7+8 W6-6 W12+8 L2+4 L6+6
Lumps&Neck N2-3 N3-3 K7+5
Lumps&Shoulder SH1-4 SH2-7 SH3-6 SH4-6 SH5-4 SH7+11 B4-5 L6+5
Lumps&Sleeve B7-4 L1-6 L2+9 L3-4 L4-4 L6+10
Lumps&Tight B6-5 L6+4 L7-4 X2-4
Lumps&Travels N8-5 B3+4 B4-5 B6+5 B7+5
Lumps&Waist W2-8 W3-4 W4-4 W12+11
Neck N1+12 N2+15 N3+6 N4+4 N5+8 N6+8 K7+4
Neck&Shoulder N1-4 N2-5 N6+12 SH1-5 SH2+4 SH3-4
Neck&Sleeve SH1+4
Neck&Tight N1-3 N2+20 N5-4 N7+5 B1-3 B15+4 W9-3 X2-3
Neck&Travels SH1+5
Neck&Up N1-5 N2+3 N3-7 N8+12 K3-5 W1-5 D3-3
Shoulder N5+3 SH1+7 SH2+10 SH3+12 SH4+11 SH5+6 SH6+7 SH7+7
Shoulder&Sleeve SH1-4 SH2-12 SH4+4 L1+5 L3-5 L4-4 D3-4 D2+9
Shoulder&Tight SH1-4 SH2+16 SH3-7 SH4+12 SH7-3 B15+3 A1-4 D2+6
Shoulder&Travels N5+11 SH2-5 SH4-6 SH5+4
Shoulder&Up N6+6 N7-4 SH1-5 SH3-7 SH4+9 SH5-8 SH6-9 SH7-5 SH8-4 B2-8 K3-8 L1+4 L2+5 D3-7 L9-4 D1-7 D2-6
Shoulder&Waist SH3-6 SH4-7 W2+4
Sleeve SH3+3 L1+7 L2+8 L3+8 L4+8 L6+7 L7+4 L9+6 D1+7 D2+7 D5+5 D6+6 D7+5 D8+5
Sleeve&Tight SH2-4 SH5+4 L2-3 L3+15 L4-4 L6-5 L7+10 L8+3 L9-4 D1-3 D2+12 D6-3 D7+14 X2-4
Sleeve&Travels N8-9 SH5-6 W7-4 L2-6 L4+9 L6-5 D5+8
Sleeve&Up SH4+6 B2-6 K1-4 K3-3 W1-5 L1+10 D3+3 L6-6 L9+9 D1-3 D7-4
Sleeve&Waist B10-3 A4-3 W2-3 W3-4 W4-5 L1-5 L5+4 D1-3 D2-4 D4+6
Tight N2+5 B1+5 B3-3 B11+5 A1+4 K1+6 W3+6 L3+5 L8+3 D7+3 X2+13
Tight&Travels N8-3 B1-4
Tight&Up N2-4 B3-4 D3+6 D2-4
Tight&Waist W1-6 W2-5 W3+21 W4-7 W5-4
Travels N5+9 N7+8 N8+11 SH2-3 W7+4 W8-3 L4+4
Travels&Up K3-5 W9+6
Travels&Waist N8-3 W1-4 W5+4 W10-3
Up N3-4 SH4+3 B2+13 B5+4 B6-3 B13-3 B14-4 K1-4 K3+9 K7-3 W1+11 W2-4 W5-3 W9+3 W11-4 L1+5 D3+7
Up&Waist B2+8 K2-5 K3+7 K6-6 W1+11 W3-7 W4-6 W5-7 D3-4
Waist K5-4 K6+7 W1+9 W2+9 W3+12 W4+12 W5+6 W9-4 W10-3
above N4-7 SH2-3 SH3-10 SH5-5 SH7+5 SH8-3 B4-4 B6-8 B7-3 B8-6 B12-6 B14-5 B15-4 A2-3 A3-4 A4-3 A5-3 K1-3 K5-6 K6-9 W1+5 W2-4 W3-5 W4-6 W5-4 W6-4 W7-3 L2+6 L3-6 L4-5 L6-6 L7-6 L8-3 L9-3 D1-9 D2+7 D4-4 D5-5 D6-4 D7-6 X2-4 X3-5
above>apex B4-4 B5+5
above>arm D3-4 D2+4
above>armhole SH4+4 SH7-3 A1-5 L7-3
above>back N2-3 N4+4 N5-3 N6-3 N7+4 N8-3 A4-6 K1-5 K3-5 K5-6
above>backWaist SH1-3 B2+6 K2+5 K3-5 K6-9 W5-6
above>bust B1-5 B3-4 B6-3 B9+3 B11-3 B15-3
above>cutInSleeve SH4-6 SH7-3 B2-5 K3-4 W1-6 L1-6 L2-3 D3-5 L7-5 L9-4 D1-4 D2+8 D5-7 D7-6 D8-4 X2-4
above>front N2-3 SH4-5 SH7+4 B2-5 B11+5 B14-5 A4-3 A5-4 K1-4 K3-4 K5-3 W10-4 L2-3 D2-3 X2-4
above>frontWaist B10-3 B14+4 K2-3 W2-5 W5-5
above>hip W9+4
above>lowerBack K2+3
above>placket N2+7 N5-3 N7-4 N8-3 SH1-3 SH4-6 SH6-3 SH7-5 B1-4 B2-3 B5-3 B7-3 B11-4 B12-8 B13-3 A1-5 K1-4 K2-4 K7-4 W1-4 W3-5 W9-3 W10-4 L1-3 L2-5 L5-3 D3-4 L7-4 L8-3 D2-5 D7-4 X2-7 X4-4
above>seat K2+5 W9-3 D4-3
above>shoulder N5-8 N6-5 N7-4 N8-4 SH1-4 SH2-5 SH3-10 SH5-4 SH7-6 SH8-5 B5-4 A1-5 K3-4 W1-5 W10-3 L1-6 L2+6 L5+6 D3+6 L6-4 D1-8 D2-4 X1-3 X2-5 X3-4
above>shoulderSeam SH6+3
above>shoulderTip SH5-5 SH7-6 D2-6
above>sleeve SH4-5 A1-3 L1-4 L2+3 L3-5 L4-6 D3-4 L7+4 D1-3
above>spine K7+3
above>underBust B14-6 K2-4 W1+4 W2-3 W3-5 W4-3
above>underarm L1+4 L2-4 D4-4
above>waist SH6-3 SH7-3 K3-5 K6-5 W1+10 W4-14 W5-6 L2-4
across B9+5 B11+5 B13-7 B14+6 K1+5 K2+5 K4-5 K5+5 K6-3 L2+5 D1+6
across&allRound B14-5 W1-10 W2+12 W3-6 W4-6
across&apex B1+4 B5-6
across&arm L3+3
across&armsDown D2+4
across&back SH8-4 K1-6 K5+4
across&backWaist K2+9 K3-7 K6-11
across&blade B9-3 A3-4 K1+7 K2-6 K3-3 K4-6 K5+11
across&bunch B9+5 B11-4 K1-3 K5+4 W2+3 L2+5
across&burst B6-3
across&bust B1+9 B3-10 B9+3 B11-5 B13-4 B14+3 B15-5
across&centre K2-6 W2+6 X1-3
across&collarbone B4-4 B5+6 B6-6 B7-4
across&cutInSleeve L3-5 D3-4 D2+8
across&dart B5-5
across&down K1-3 K4+4 L1+3 D2-3
across&empty B3-4 B9+4
across&extra B9+5 B10-4 B11-3 B13-6 B14+6 K5+4
across&fold B3-3 B9+6 B13-7 B14+5 A4-5 K2+4 K5+9 L2+4
across&front B11+5 W5+5 W10-4
across&frontArmhole SH8-5 B8-7 B9+6 B10-5 B11+3 B14-4 A5-6 K2-3 K5-5
across&fullBust B1+5 B3-7 B15-4
across&gape N1-3 B8-6 L2-3 L9-4 D1+5 D6-4 D7-5 D8-5
across&high SH8-3 B2-5 B14-6 W5+5
across&hip W9+9
across&inward SH2+4 K2-3
across&long B14+4
across&looksPregnant B9+4
across&loose B8-4 B9+4 B11-6 B13-8 B14+6 A5-3 K5+7
across&low K1-3 K4+4 L1+3 D2-3
across&lowerBack K2+8 K6-4
across&misses B5-4 B6+4
across&nape N3-9 N4+12 K7-6
across&narrow SH4-4 B11+6 B14-4
across&neck X3-4
across&outward B10+4 B11-3 K5+4
across&past K5+4 W2+4
across&placket B1-4
across&pointy B4+3
across&pull B8-3 B9-4 B11+5 B15-3 K1+3 K3-5 K5-4 W3+5 W9+3
across&reach N5+3 K1-3 K4+3 X3-4
across&rise B2+3 K2-4 K3+3
across&roundBack L3+3
across&sag B2-4 B11-3 B14-7 W5+5
across&seat B11-3 K1-3 W9+7
across&shoulder N5+4 SH3-5 L2+4 L3-4
across&shoulderTip SH2+4 SH4-4
across&sleeve SH3-3 K1-3 L4-8 L5-3 L6-5 L7-3 L8-4 L9-4 D1+9 D2-5 D5-5 D6-6
across&sleeveCap L2+13 L6-11 L7-5 D5-4
across&sleeveHem N1-3 B8-6 A3-3 L2-5 L9-9 D1+9 D2-3 D6-6 D7-10 D8-9
across&small K1+5 W10+4
across&stickOut D1+4
across&strain B9-4 B11+8 B15-5 K1+6 K4-8 K5-3 W9+3 X2+6
across&tight B1+5 B3-6 B9-4 B11+6 B15-4 K5-4 W9+3
across&tummy W10+7
across&underBust B3-4 B9-5 B13-16 B14+16 K2-5 K5-4 L2-3
across&upperArm SH3-4 B9-3 B11-4 K2-4 K5-4 L3+10 L4-4
across&upperBack K1+8 K3-7
across&upperChest B9+7 B11+10 B15-6
across&waist B14-3 K5-4 W2+4 W3+7 W4-9
across&wavy N3-5 N4+6 B3-3 B9+6 B10-4 B11-4 B13-8 B14+8 K1-6 K5+5 K7-4 W1-3 L2+5 L6-6 L7-4 D8-6
across&whole B1-3 B11-4 B13-3 K1-4 W1-4 W2+3 W3-3 L3-3 D5-4 X2+9 X3-7
across&wide B9-4 B10+4 B11-4 A4+5 K1-6 K5-5
across&widerHips W9+4
aheadOf N2-3 N8+6 SH3-6 SH6+11 SH8-4 B2-4 B3-4 B8+6 B9-3 B10+5 B11-5 B13-5 B15-3 A1-3 A2-5 A4-5 A5+17 W4-3 W7-3 W10-4 L4-3 D4-4 X3-5
aheadOf>arm N8-5 SH3-4 SH5+4 B8-5 B10-4 A5-7 K1-3 W6-4 L2-3 L3-6 L7-4 D1-6 D4-3 D5-6 D6-3 D7+4 X2-3
aheadOf>armhole B10-3 L1-4 L2-5 L6+5
aheadOf>backHem N8+3
aheadOf>bust B15-4 W6-5 W8+9
aheadOf>elbow B10-3 B11-3 B14-4 A5-3 L8+5
aheadOf>frontArmhole B10+3
aheadOf>hem W6+4
aheadOf>neck N1+4 N2-6 N5-3 N7-3 N8+4 B14-5 A5-4
aheadOf>shoulderSeam N8+6 SH5-4 SH6-7
aheadOf>shoulderTip SH2-4 SH3-3 SH5-3 SH6+4
aheadOf>sideSeam W8+3
aheadOf>sleeve N1-3 N8-6 SH3-5 SH5+4 SH7-3 B2-3 B3-3 B8-7 B10-5 B11-3 B14-4 A4-4 A5-8 K1-4 K2-3 W5-4 W6-5 W8-3 W10-3 L1-4 L2-4 L3+4 L5-4 D3-4 L6-9 L7-5 L8-4 L9-4 D1-8 D2-4 D4-4 D5-8 D6-4 D8-3 X2-3 X4-3
aheadOf>underarm A5+3 D4-7
aheadOf>waist N8-4 W6+4
allRound N1-4 N4-3 N8-3 SH1-3 SH2-3 SH4-5 SH5-3 B3-5 B4-4 B6-3 B14-8 K3-5 K4-3 W1+6 W2+8 W3-3 W4-6 W9-4
allRound&arm L3-4 D7+5
allRound&armhole SH3-4 SH7+6 A1-6
allRound&back B2-4 K2-4 W2+6 W5-6 D5-4
allRound&backward W7-4
allRound&bodice B2-5 W2+5 W4-4
allRound&bothSides SH3+4 SH4-4 B3-3
allRound&bunch K2-4 W1-11 W2+13 W3-11 W4-4
allRound&bust B1+4 B2-4
allRound&centre W1+6 W2+4 W4-4 X1-3
allRound&dart B4-4 B5+3
allRound&ease L6+4
allRound&extra B3-5 W1-5 W2+3 W3-7
allRound&fold N2+3 N4-3 B14-4 K2-4 W1-13 W2+15 W3-3 W4-4 W5-3 L1-4 L4+4
allRound&front B2+4 A1-3 L3-4 D7+4
allRound&frontWaist B2-4 K2-4 W2+5 D5-4
allRound&fullBust B1+4 B2-4
allRound&gape A3+4 K4-3 D1-4
allRound&hang D5+7 X1-5
allRound&high B2+4 W2+3 W5-4
allRound&hip W9+3
allRound&long W1-6 W2+5
allRound&loose W1-7 W2+3 W3-7 W5+4 X3-5
allRound&low W1-3 W2-15 W5+13 L1+3
allRound&nape N3+4 K7-4
allRound&neck N1-4 N2+6 B2-5 B15-4 W1-5
allRound&outward N5+3 W2+4
allRound&past SH3-3 B14-4 W1-3 W2+6
allRound&pull L3+4
allRound&rise N7-6 N8-4 SH4-3 B2-13 B5-3 K3-8 W1+12 W3-3 W4-3 W9-7 L1-4 D3-3 L8-4 L9-3 D5-3 X3-4
allRound&sCurve SH7+10 A1-7 W8-3 L7-5
allRound&sag N7+4 N8-4 W1-8 W2-6 W5+8
allRound&seam N6-3 N7-4 SH2-5 SH3+4 SH4-6 SH6+4 B1-4 B3-6 A5-5 W2-4 W3-5 W6-4 W7-4
allRound&short N1-3 N2+5 N4-4 N5-6 N6-4 N7-5 N8-4 SH3-5 SH6-4 SH7-4 SH8-3 B2+7 B3-4 B4-3 B5-4 B7-3 B8-3 B10-4 B11-4 B12-3 B15-5 A3-3 A4-4 A5-4 K3-10 K7-3 W5-4 W6-3 W7-3 W9-3 W10-4 L1-8 L3-4 L5-3 D3-3 L7-5 L8-3 L9-7 D2-5 D5-4 D7-3 X1-4 X3-4 X4-3
allRound&shoulder N5-6 SH3+3 SH4+4 SH6-4 B3-3 W1-3
allRound&shoulderTip SH1-5 SH3+5 SH4-7 SH5-4 SH6-5 SH7-4 D8-3
allRound&sit W1+3 W2-4
allRound&slant SH1+3 L1-9 L4+10 D5-6
allRound&sleeve L1-7 L3-4 L4+5 D7+4
allRound&sleeveCap SH3-3 L1+3 L2-4
allRound&slide N5-4 N7+5 N8-7 SH6-3 W5-5 W7-4
allRound&small SH7+8 A1-7 X2-4
allRound&smallBust B3-7 W3+3 W5-4 L3+3
allRound&strain SH1-4 SH3-3 SH4-4 D2+3 D8-3
allRound&swing W1-3 W5+3
allRound&tight N2+3 B1+3 B2-4 B11-4 K1+5 X2-3
allRound&tilt N7-3 SH5+3 W1-3 W2-4 W3-3 W4-5 W5+5 W7-4
allRound&tip N7-3 W7-4
allRound&underBust B4-3 B5+3 B14-3 W2+4
allRound&underarm SH1+4
allRound&uneven L4-5 L9-4 D5+9 X1-5
allRound&upperArm SH3-4 B1-3 B3-4 L3+6 L4-4 L6-4
allRound&upperBack K1-3 K3-4 K5-3 K6-4 W1+5 W2-4 W3-4
allRound&waist B3-4 K6-3 W1+4 W2+6 W4-4 W5+6
allRound&wavy N3-4 N4+4 W1-3
allRound&whole B14-4 W1-4 W2+5 X3-4
allRound&wide W1+4 W2-4 W4-4
allRound&widerHips W9+3
allRound&wornOn N7+4 N8-3
angleFlat B4-4 B6+5
apex B1+5 B4+8 B5+6 B6+7 B10-4 B11-5 B13-3 B15+3 K1-3 W8-3
apex&bunch B1-6 B3+9 B4-7 B5-7 B6-5 B9-4 B15-3 A5-5 K2-3
apex&bust B1+5 B11-4
apex&bustDart B5+4
apex&dart B7+3
apex&dartTip B6-8 B7+4
apex&fold SH1-3 B1+6 B3+3 B4-4 B5-3 B6-4 B10-4 B13-4 A4-3 W8-3
apex&gape B5-3 B13+3 X3-3
apex&loose B3+3 B5-4 B10-4 A4-4 X3-5
apex&low B3-4 B5+4 B6-4 B13+4 X3-3
apex&misses B1+4 B3-8 B4-13 B5+9 B15-3
apex&narrow SH4-5 B1-9 B3-5 B4-5 B5-4 B6+10 B11-6 B15-4 K1-6 L3-4 D7-5 X2-7
apex&neck B1-6 B15+4
apex&neckSide N2-3 B1-4 B15+7
apex&oneShoulderLow B1-7 B15+8
apex&outward B4-5 B5-5 B6+7
apex&past B4+12 B5-8 B6-11 B7-4
apex&pointy B3-4
apex&pull N2-4 B1+9 B3-4 B4-6 B5-5 B6-5 B11-4 B15+3 K4-3
apex&sag B5+5 B6-3
apex&seam B1-5 B15+4
apex&shoulder B1-4 B15+4 D2-3
apex&shoulderSeam SH2-4 SH6-5 B1-4 B15+8
apex&sideSeam B1+8 B3-3 B15-10 W6-6 W7-5 W8-4
apex&slant B1+6 B4-3 K4-3
apex&strain B1+6 B4-4 B5-4 B6-3 B15+6
apex&swing B6+3 B8+4
apex&tip B4-4 B6-4 B7+5
apex&upright B1-7 B4-6 B5+7 B6-7 B10-5 B13-5 B15-4 A4-6 K6-5 W4-4 X3-5 X4-3
apex&wide N3-3 N5-5 SH3-5 B1-3 B3-8 B4-7 B5-6 B6+9 B10-7 B13-5 B15-3 A4-6 W4-4 D6-5 X3-6
arm N2-3 A1+7 L1-4 L2-5 L3+4 L4-5 L6-3 D2-4 D6-5 D7+4
arm&armhole L7-3
arm&armsUp SH3-3 SH5-3 A1-5 K1-3 L3-6 L4-3 L5+7 D3+7 D1-4 D6-4
arm&back B10-3 A4+4 K1-4
arm&bendElbow A1-6 K1-8 L5-3 L8+3 D7-4
arm&blade B10-4 A4+7
arm&bodice A1+5 L3-4 L8-3 D7-3
arm&bunch A4+4 A5+3
arm&bust B3-4 B11-3 A5+6
arm&cannot SH3-4 SH5-3 B8-4 B11-5 A1+4 K1+3 L3+5 L4-6 L5-6 D3-3 L6-5 L8-7 L9-5 D1-6 D4-5 D5-3
arm&catches L3+5 L4-3 D1-5 D2-3 D6-4
arm&chest B3-4 B11-3 A5+6
arm&choke N2-8 N7-4 SH3-4 SH7-3 B8-3 B10-4 A1+7 L2-4 L3-6 L4-7 D3-4 L7-3 L9-4 D1-5 D2-5 D7+3 D8-4
arm&cutInSleeve D3+5 D2+4
arm&dig A1+3 L3-6
arm&empty SH5+5 SH6-4 B3-6 B8-4 B10-3 B11-4 A1-4 A4-5 L2-5 L4-5 L7-5 D1+5 D4-4 D5-5 D6-4 X2-3
arm&extra B3-5 B8+7 B13-3 A1-3 A4-4 L3-6 L4-4 D1-5 X3-5
arm&fold SH5+4 L3-6 L4-7 D4+4
arm&forward N8-5 SH5-5
arm&front SH3-3 SH5-4 SH6-3 B6-3 B10+4 B14-3 A4-4 A5-5 K1-3 L4-7 L7-4 D1-6 D5-4
arm&gape N1-3 SH3-3 B8-7 A1+5 A3-4 K1-5 L2-4 L3-8 L4-5 L5-4 L6-3 D1+6 D4-3 D6-4 D7-4
arm&grip A1-5
arm&hang B10-4 L4-8
arm&hem D3+6 L9-5
arm&high L9+3
arm&inward SH4-4 L3-4 L9+7 D7-3
arm&loose SH3-3 B8+7 B13-3 A1-3 K1-4 L2-4 L3-5 L4-5 D1-4 X3-5
arm&low SH3+7 L1-5 L3-5
arm&misses SH5-5 A1+3 L4-5 D5+4
arm&narrow SH3-5 B11+3 K1-3 L3+3 D7-5
arm&pull D3-4 D7-3
arm&rise D3+9
arm&roundBack L3+5
arm&sag SH3+5
arm&short SH4-4 L1-3 L3-4 L9+6
arm&shoulderSeam SH5+3 L4-4
arm&shoulderTip SH3+4 SH5-4 L1-3 L3-4 D2-3
arm&side D3+6
arm&sleeve A1+7 L2-3 L3+4 L4-4 D6-3 D7+4
arm&sleeveCap A5-3 L1-3 L6-3 L7-4 D1+4
arm&sleeveHem A1-4 L3-6 D7+8 D8-4
arm&small A1-3 L3-5 L4-4 D7+5
arm&strain A1-4 L3+6
arm&swing N8-5 SH5-5
arm&tight SH3-3 L8+5 X2-3
arm&tilt SH3-4 SH5-4 B8-4 B11-5 A1+4 K1+3 L1-3 L3+5 L4-6 L5-6 D3-3 L6-5 L8-8 L9-5 D1-6 D4-5 D8-3
arm&twist SH3-4 L3-5 L4+5 X1-4
arm&upperBack A4+3
arm&upperChest B10+3 A4-5
arm&upright A4+4 D4+4
arm&waist B10-3 A4-3 W4-5 D4+6
arm&wide B10+5 B11-5 D1-4
armhole SH3+4 SH4+4 SH7+9 B8+7 A1+9 A2+9 A4-3 A5-3 L7+11 D6-3
armhole&armsDown SH3+7 SH4-3 SH7-6 A1-8 A2-8 A3-4 L7-7 D2-3 D4-5
armhole&back B8-7 A2-4 A3+11
armhole&backArmhole A3+8
armhole&big SH1-3 SH3-6 SH4-4 SH7-7 B3-5 B8-9 B10-3 A1-8 A2+12 A3-6 A5-3 K1-5 W4-5 L6+3 D4-6 D6-5 X3-16
armhole&blade SH7-5 B8-7 A1-3 A2-5 A3+9 K1-4 K5-4 L7-3
armhole&bodice SH7-3 A1-4 A2-4 L7+5
armhole&bothSides SH7+6
armhole&bra B8+4 L7-3 D6-10
armhole&bunch A2+6
armhole&bust B1-5 B3-6 B8+9 B15-3 A1-4 L7-3
armhole&choke SH1-3 B8-4 A2+4 L7-4 D1-7 D4-4
armhole&dig SH3-4 SH4+8 SH7-6 B8-4 A1+9 A2-4 L7-7
armhole&down SH3+5 A5+3 L7-4
armhole&ease A1-3 L6-5 L7+5
armhole&extra B3-3 A2+3 A4+4
armhole&fold SH1-4 A1-5 A4-5 L4-4 L6+5 L7+4 D4-4
armhole&front B8+4 A1-6 L6+5
armhole&frontArmhole A1-5 L6+5
armhole&fullBust B1-5 B3-6 B8+8 B15-3 A1-4 L7-3
armhole&gape SH7-5 B8+14 B12-5 A1-5 L7-4
armhole&grip A1+8
armhole&hang A2+4 A3-5 A4+3 D1-7 D4-4
armhole&hem A1-3 A2+6 W9-3 W11-4
armhole&high SH4-4 SH7-4 B2-4 B5-5 B8-4 A1+7 A2-5 A3-3 K3-4 W1-4 L7-6 L9-4
armhole&inward N6-3 SH2-4 SH3-5 SH4+14 SH7-6 B6-5 B8-5 A1-11 A2-6 L7-8 X2-4
armhole&long SH3-5 SH7-3 B4-4 B8-5 B9-4 B14-4 A1-4 A2-6 K5-3 W2-6 L2-6 L6+7 L7+5
armhole&loose SH3-3 B8+4 A2-3 A3+7
armhole&low SH7-4 B5-4 B8-5 A1-5 A2+10 W2-4 L7-7
armhole&misses SH3-4 SH5-4 B8-3 A1-4 A2-4 A3+4 L7-4
armhole&narrow B11+4
armhole&neck N5-3 SH1+10
armhole&oneSide SH7+5 SH8+4 L7-3
armhole&open SH7-3 B8+5 A1-4 A3-3
armhole&past SH1-4 SH3+6 SH7-8 L7-4
armhole&peak SH3-6 SH4-4 SH7+14 A1-4 L7-4
armhole&pinch SH4-4 A1+5
armhole&pointy SH3-3 SH7+4
armhole&prominentBlades N8-3 SH1-4 SH3-4 SH4-3 SH7-4 B8-7 A1-5 A2-5 A3+4 K4+5 L7-5
armhole&pucker SH7-6 B7-4 B8-5 A1-6 A2-6 L6-9 L7+11
armhole&pull A1+5 A2-4
armhole&reach B8-3 A1-5 A2+6 K1-5 X3-5
armhole&rise A3+4
armhole&sCurve SH7+10 A1-6 L7-4
armhole&sag SH1+4 SH3-9 SH4-3 B8-8 B14-3 A1-8 A2+8 A3-4 W5-5 W11-4 L7-7
armhole&seam SH3-6 SH7+9 A1-6 L6-3 L7-3
armhole&seat A2+6 A3+4 W9-3 W11-3
armhole&short L1-4 L6-4
armhole&shoulder SH4+4 SH7+7 A1-9 A2-3
armhole&shoulderLength SH3-11 SH6-3 SH7+3 B8-4 A1-7 A2-6 L7-5
armhole&shoulderSeam SH3-9 SH6-4 SH7+7 A1-5 A2-3 L7-3
armhole&shoulderTip SH1-5 SH2-9 SH3+4 SH4+5 SH5-4 SH7+5 B8-4 A1-5 A2-6 L7-5
armhole&show SH7-4 B8+6 A1-5 A3+3 L7-5
armhole&side SH7-3 A1-4 A2+4 D6-4
armhole&skin B8+7 A3-6
armhole&slant SH3-3 B8-4 A1-4 A2+10 L7-6
armhole&sleeve SH7-3 B8-3 A2-5 A5-5 L3-3 L4-4 L6+5 D5-3 D6-4
armhole&sleeveCap A1-5 L1-5 L2-3 L7+8
armhole&sleeveSeam SH3-3 L6-8 L7+10
armhole&sleeveless B8+3
armhole&small B8-4 B11-3 A1+6 A2-6 A5-4 L3-7 L6-5 L7+6 X2-8
armhole&stickOut SH1-4 SH3-12 SH4-7 SH7+13 A1-10 A2-10 K4-4 W10-6 W12-4 L2-3 L7-8 D1-7
armhole&stickUp B10+3
armhole&strain SH7-5 B8-3 B11-3 A1+7 A2-5 A3-3 K1-4
armhole&swing N5-5 SH4-4 A1-4 A3-3 K4+4
armhole&tight SH4+9 SH7-3 B1-4 B3-3 B8+4 A1+6 K1-4 L7-3 X2-3
armhole&tilt SH8-3 A2+3
armhole&underBust A2+3
armhole&underarm B8-7 A1+7 A2+5 D4-3
armhole&upperArm SH3+4 SH4-4 SH7-5 A2-5 L1-4 L3-10 L6-4 L7+4 D7-3
armhole&upperBack A4+4
armhole&upright A3-4
armhole&wavy SH3-4 SH4-4 SH7-7 B1-3 B9-3 A1-11 A3-4 L6-6 L7+13 D8-4
armhole&wing N1-3 N7-3 SH1+7 SH4-4 SH7-8 B2-3 B8-4 A1-9 K3-3 K7-3 W1-3 L2-5 L7-8 D1-11 D2-4 D4-6
armsDown N6-4 SH1-4 SH2-4 SH3+10 SH4-7 SH5-7 SH6-8 SH7-6 SH8-3 B10-4 B11-4 B13-3 A1-9 A2-8 A3-4 A4-3 K1-4 W1-3 W4-3 W7-3 L1-6 L2-5 L3-9 L4+5 L5-6 L6-5 L7-8 L8-4 L9-4 D1-8 D2+5 D4+6 D5-10 D6-6 D7-5 D8-5 X1-4 X2-6 X3-5 X4-3
armsDown&bunch D4+4
armsDown&cannot B11-3 K1-4 W1-4 L5-5 D3-6 D4+7 X1-5 X2-6 X3-4
armsDown&cutInSleeve SH3-6 SH4-3 L3-3 L4-3 D3+6 D1-5 D5-8 D7-4 D8-3
armsDown&extra D4+5
armsDown&frontArmhole A5+4
armsDown&pull D2+6
armsDown&shoulder SH3-6 SH4-6 D2+4
armsDown&shoulderSeam N6-6 SH2-5 SH3+10 SH4-5 SH5-8 SH6-9 SH7-4 D3-3 D2-5 D4-3
armsDown&shoulderTip SH3-4 D2+3
armsDown&sleeve SH3-11 SH4-4 B8-4 W4-3 L1-6 L2-5 L3-8 L4+8 L5-4 D3-4 L6-5 L8-4 L9-3 D1-6 D2+6 D5-3 D6-7 D8-3 X3-5
armsDown&sleeveCap L1-3 D2+8
armsDown&strain SH3-5 SH4-3 L1-4 L3-6 L4-5 D2+7
armsDown&tight D2+8
armsDown&tilt B11-3 K1-4 W1-4 L5-5 D3-6 D4+7 X1-5 X2-6 X3-4
armsDown&underarm D4+6
armsDown&upperArm D2+4
armsUp A2-5 L1-3 L5+20 D3+24 L6-3 D2-3 D6+9
armsUp&back K3+5 D3-5
armsUp&backWaist D3-4
armsUp&bodice W1-5 D3+9
armsUp&bra B8-11 A2-9 L5-3 D3-4 D6+17
armsUp&cannot K1-5 L5+19 D3+9
armsUp&cutInSleeve L5-6 D3+12 D2-4 D5-4
armsUp&ease L3-3 L4-4 L5+9 D3-6 L6-9 D6-4
armsUp&fold W8+6
armsUp&front B2+3 D3-4
armsUp&frontWaist B2+7 W1-3 D3-6
armsUp&gape L2-4 D3-4 D1+5
armsUp&grip L5+4 D3+6
armsUp&hem K3-6 D3+6 D2-3
armsUp&loose B2-4 D3+10 X3-3
armsUp&low L5+5
armsUp&nape N8+6 D3-5
armsUp&pull L1-4 L5+5 D3+8 D2-5
armsUp&reach B8-4 K1-6 L5+6 D3+5 D6+4
armsUp&rise W1-4 D3+20
armsUp&seat K3-3 W9+5 D3-5
armsUp&show B8-10 A2-8 L5-4 D3-4 D6+16
armsUp&side D3+8
armsUp&sideSeam W6-4 W7-3 W8+8 L5-4 D3-4 D8-4
armsUp&sleeve L1-4 L3-6 L4-4 L5+17 L6-8 D1-5 D5-3 D6-4
armsUp&sleeveCap L1-6 L2-5 D1+5 D2-4
armsUp&sleeveHem D6-3 D8+7
armsUp&stickOut K2+4 K6-3
armsUp&tilt K1-6 L5+15 D3+10
armsUp&tummy L5+4
armsUp&uneven W8+3
armsUp&up D3+5
armsUp&waist W3-3 L1-4 L5+4
armsUp&wavy W8+6
armsUp&whole D3+8 X2-3
back N7+5 SH5+6 A4+3 K1+4 K3+6 K4+3 W4-3
back&backArmhole A3+8
back&backHem W7+4
back&backWaist K3-4
back&backward N8+4
back&bendElbow SH5-3 A3-3 A4+6 K3-3 K4-3 K5-8 K6-3 L8-5
back&blade A4+4 K1-5 K4-4 W2-5
back&bothSides K1-3 K4+3
back&bulge K7+4
back&bunch N4+6 N7-3 K1-3 K3-4 K5-6 L2-4 L4+5
back&burst N7-3 A4-4 K1+9 K3-6 K4-5
back&bust W8+3
back&centre N3-3 N7-3 SH5-3 B2-5 A4-4 K1-4 K3+3 K4-4 W1-3 W2-7 W4-4 W7-4 X1+7
back&choke N2-8 N3-5 N4-4 N7+8 K1-4 K3-5 K7+3 D5-3
back&collar N1-4 N2-5 N3+4 N5-4 K3-4 K7+3
back&dig N2-3 N7+4
back&down N7-4 N8+4
back&erect A4+3 K1-8 K2-3 K3-4 K5+4
back&extra A4+3 K2-4 K6+4
back&fold SH8-3 K1-4 K2+6 L4+4 D5+5
back&forward W8+3
back&forwardShoulders SH5+4 K3-5
back&front N2-5 N3-3 SH7+3 K1+3 K3-5 K5-4 X1-3
back&frontNeck N8+4
back&frontWaist N7-3 B2-9 K1-4 K2-5 K3-5 K5-4 W1+4 W2+5 D5-5
back&gape B8-5 A3+6 K6+3 W11-3
back&grip K1+5
back&hang A3-4 K2-4 K3-4 D5+5 X3-4
back&hem SH8-3 W7+4 W9-4 W11+4
back&high N2-4 N7+4 SH8-6 B5-3 K3+4 K5-3 W11+5
back&hump K7+4
back&inward SH2+4 SH4-4 K2-3
back&long N7-5 SH3-4 SH5-4 B4-5 B9-4 K1-5 K3-7 K4-3 K5+10 K6-3 W2-8 L2-3 L4-4 L9+5
back&loose N3+4 K3-5 K5+7 W4-6 X3-3
back&low N7-7 N8+4 B5-4 A5-3 K2+5 K3-4 K5-5 W2-4
back&lowerBack K2+6
back&misses SH5+6 SH6-3 A3-4 A4-6 K1-4 K3-7 K5-6 K6+6 W4-4 W5-3 X4-3
back&nape N2-4 N3+5 K3-4
back&narrow B6-3 B11-4 A4-3 K1+6 K3-5 K4-4 W9-3 L3-3
back&neck N2-3 N8+4 K7-8
back&open K6+3
back&outward SH5-3 A4-5 K2-3 K4+4 W7-4 X1-4
back&past SH2-3 SH3-6 SH4-5 SH5+7 SH6-5 K2-3
back&peak SH7+3 K3-3
back&pucker K2+5 K3-3
back&pull N2-3 N7+5 SH5-4 K1+3 K3-7 K4+8
back&reach N7-3 B2-3 K1+10 K2-3 K3-6 K4-7 K5-8 W1+4 L4-5 D5-3
back&rise N4-4 N7-4 B2-6 A4-4 K1-4 K3+12 K5-4 W1-4 W9-7 D3-5
back&roundBack K1-3 K3+4
back&sCurve SH7+3 K2-4 K6+3
back&sag N2-6 N7+6 SH8-5 B14-3 K1-3 K3-6 K5+4 W5-4 W11+6 L9+5 D7-4 D8-4
back&seam SH2-4 SH4-4 SH5+6 A4-5 K3-4
back&seat K1+3 W9-5
back&short N7-4 B2-7 A4-5 K1-5 K3+10 K4-4 K5-4 L9-3 X1-4
back&shoulder N5+3 N7-4 SH3-4 SH4-4 K3-3
back&shoulderSeam N5-3 N6-4 SH3-8 SH5+10 SH6-8 A4-3 K1-4 K3-4
back&shoulderTip SH4-8 SH5+8
back&show N7-4 B8-4 A4-4 K1-5 D6-4
back&sideSeam SH5-4 K3-5 W6-8 W7+14 W11-5
back&sit N2-5 N3-4 N4-4 N7+7 SH5-6 B2-4 B5-3 B8-3 B9-3 B12-5 A3-5 A4-7 K1-7 K2-5 K3-8 K4-6 K5-7 K6-3 W1-4 W2-6 W5+4 W7-4 W10-3 W12-3 L4-4 L5-4 D3-4 L9-3 D5-4 D6-3 X1-3
back&slant N7-6 B15-6 A4-4 K1-12 K3-8 K4+12 L1-4
back&sleeve SH3-4 K2-5 K3-5 K5-9 L1-3 L2-5 L3-4 L4+5 L6-5 L9+4 D1-4
back&sleeveSeam A4+4
back&slide N7+5 K3-3 W7+5
back&small N2-4 N7-3 A4-3 K1+8 K3-6 K4-4 X2-5
back&strain B15-4 A4-4 K3-5 K4+8
back&swing K1+4 K3-3 W6-3 W7+3 L4-6 D5-3 X1+5
back&throat N2-6 N7+6 K1-3 K5-4
back&tilt SH5+3 SH6-3 K1-6 K3-4 K4+5 W6-5 W7+5 W8-3
back&up N5+4
back&upperBack A4-4 K1-4 K5+5 K6-4
back&upright B10-5 A3-3 A4+7 K5-6
back&waist N3-4 K2+4 K3-6 K5+4 K6+3 W1-3 W2-7 W4-6
back&wavy N7-3 K1+4
back&whole SH5-3 A4-6 L4-5 D5+9 X3-4
back&wide N5-5 N7-3 SH5-3 B6-4 B10-5 A3-4 A4+13 K1-8 K3-6 K4-3 K5-6 D6-3 X3-4
back&wornOn N7+6 SH5-9
backArmhole B8-4 A3+14 A4+4
backArmhole&edge A3+3
backArmhole&fold B10-6 A4+7 D4-3
backArmhole&gape B8-3 A3+11
backArmhole&loose A2-3 A3+10 A4-6
backArmhole&open A3+9
backArmhole&upright B10-6 A3-8 A4+12
backHem B2-8 K3+10 K5-3 W1-3 W6-6 W7+5 W9-5 W10-5 D3-6
backHem&hem W7+4
backHem&high K3+5
backHem&long W11+3
backHem&rise N7-5 B2-8 K3+11 W1-3 W9-6 W10-4 W11-4 D3-7
backHem&sag K3-4 W11+6
backHem&seat W7+5 W11-3
backHem&short K3+3
backHem&sideSeam K3-6 W6-6 W7+9 W11-7
backHem&slide N8+3
backHem&swing W6-5 W7+6
backWaist K2+3 K3+8 K6+10 W1-4 W2-3 W4-5
backWaist&blade K2-3 K6+3
backWaist&bunch K3-5 K6+7
backWaist&dart K6+5 W3-4
backWaist&extra K2-3 K3-4 K6+5 W4-3
backWaist&fold K2+10
backWaist&gape B2+6 B8-3 A3-4 K2-8 K3-6 K6+6 W4-4 W5-5
backWaist&high K3+8 K6-5 W1-4
backWaist&long K3-4 K6-4
backWaist&loose B14+4 K3-8 K6+5 W4-7 X3-3
backWaist&open B12-3 K2-4 K6+5
backWaist&outward K6+3
backWaist&past K6-3
backWaist&pinch K2-8 K3-4 K6+8
backWaist&rise B2-9 K2-7 K3+10 K6-10 W1-6 D3-5
backWaist&sCurve K6+3
backWaist&sideSeam W7+3
backWaist&small K6+5 W3-4
backWaist&stickOut K2-5 K3-4 K6+8
backWaist&upperBack K3-5 K6-6
backWaist&upright B10-5 A4-4 K2-12 K3-6 K6+12 W4-3
backWaist&waist K3+3 W1-4 W2-4
backWaist&wavy B14-4 K2+5 K3-7 D8-4
backWaist&wide K2-6 K6+8
backward N2-6 N5-4 N7+20 N8-7 SH2-3 SH3-6 SH5+9 SH6-9 B15-4 K3-3 W6-7 W7+13 W8-4 W9-3 W11-5 L1-3 L2-4 D3-3 D1-4 D2-5 D5+12 X1-4
backward&bunch N4-4 N7-5 A5-4 K2-3 W7-5 L2-4 L4-4 D2-8 D4-3 D5+6
backward&bust W8+3
backward&choke N2-5 N7+7
backward&collar K7+3
backward&cutInSleeve N7-11 SH5-3 W7-5 L1-4 L2-5 L4-4 D3-6 L6-3 D1-7 D2-7 D5+15 D6-4 D7-5 D8-5
backward&dig N2-4 N7+3
backward&forward D5-5
backward&front N1-3 N2-4 N7+4
backward&frontNeck N1-3 N2-4 N7+4
backward&hang N7-6 SH5-4 B3-3 B13-3 A4-4 K6-3 W4-4 W7-6 D4-3 D5+8 X3-4
backward&hem W6-5 W7+8 W11-6
backward&hump K7+3
backward&loose N7+10 N8-5 B2-4 D3-3 X3-4
backward&low N7-5 N8+5
backward&misses W7+5
backward&neck N1-4 N2-6 N5-5 N7+7 B15-4
backward&outward N7-4 SH3-4 SH5+6 W7-4
backward&pull N2-6 N5-4 N7+8 SH2-3 SH5-3 B1-3 B11-4 B15-3 K4-4 W6-4 W7+5 W9-6 D2-3 D5-3 X2-4
backward&rise N7+9 B2-5 K3-3 W1-4 D3-4 X3-4
backward&sCurve N7+6 N8-3 W7-3 L4-4 X1-5
backward&seam SH5+4 SH6-4 SH7-3 A1-3 W6-4 W7+8 D5-4 X1-6
backward&seat N7-4 N8+5 W6-3 W7+4 W11-4
backward&shoulderSeam N2-4 N5-3 N6-5 N7+3 SH1-4 SH2-5 SH3-9 SH4-5 SH5+14 SH6-14 SH7-4 W7-6 D5-4
backward&shoulderTip N7-4 SH1-5 SH2-4 SH3-5 SH5+7 SH7-3 W7-4
backward&sideSeam N7-8 W6-10 W7+16 W8-4 W11-5
backward&slant SH5-3 A2-3 W6-4 W7+6
backward&sleeve N7-6 SH3-4 SH5+5 W7-6 L3-6 L4+6 L6-4 D1-4 D5-6 D6-3
backward&sleeveCap N7+4 W7-4 L1-6 L2-6 L6-5 L7-5 D1-5 D5+4
backward&slide N5-4 N7+12 N8-4 SH5+4 SH6-4
backward&swing N7-7 SH3-4 SH5+8 W6-7 W7+7 L4+4
backward&tilt N7-5 SH5+3 SH6-4 W6-7 W7+13 W8-3 X1-6
backward&tip N7-5 SH5+5 SH6-4
backward&waist W6-3
backward&whole N7+10 N8-5 W7-5 D5-5 X2-4
backward&wornOn N8+8 SH5-9 W7-3 D5-3
behindOf N1-9 N2-9 N3-7 N4-9 N5-6 N6-8 N7+5 N8-6 SH1-9 SH2-11 SH3-12 SH4-11 SH5+16 SH6-15 SH7-8 SH8-9 B1-5 B2-5 B3-7 B4-5 B5-6 B6-5 B7-7 B8-11 B9-6 B10-13 B11-6 B12-6 B13-8 B14-6 B15-5 A1-7 A2-7 A3+12 A4+10 A5-11 K1-7 K2-7 K3-6 K4-5 K5-7 K6-10 K7-5 W1-4 W2-6 W3-5 W4-9 W5-5 W6-5 W7-7 W8-6 W9-6 W10-5 W11-6 W12-6 L1-6 L2-8 L3-5 L5-6 D3-7 L6-8 L7-6 L8-6 L9-5 D1-7 D2-7 D4-9 D5+4 D6-6 D7-7 D8-6 X1-6 X2-5 X3-11 X4-6
behindOf>arm SH5-5 L4-5 D5+4
behindOf>shoulderTip SH1-4 SH2-5 SH3-4 SH4-4 SH5+6 SH7-4
behindOf>sleeve SH5-6 A5-3 D5+3
below N3-5 N4+6 SH1-4 SH2-4 SH4-4 SH7-4 B3-9 B8-4 B13+5 A2+8 W1-7 W2+5 W3-5 W4-4 W12+7 L2+5
below>apex B4-12 B5+9 B6-13 B7-4
below>armhole N4-3 SH1-3 SH7-5 SH8-7 B8-10 A1-5 A2+15 A5-8 L7-6 D4-4
below>back B2-3 W1-3 W2-6 W5+4
below>blade A4-3 K1-4 K2-4 K5+8
below>bust B1-7 B3-8 B5-6 B12-4 B13+6 B14+3 A2-3
below>collar N2-6 N3-3 N4+7 N5-3 K7-4 W12-3
below>collarbone B11+3
below>front W5+3
below>nape N3-9 N4+7 N8-3 K7+4
below>neck N3-4 K7+4
below>shoulder SH3+5 SH4-5 SH7-5 A2-5 L2+4 L3-5
below>shoulderSeam N4-4 N6+5 SH3-4 SH4-3 SH5-7 SH6-6 L2+5 L4-4 L6-5 D5-4
below>shoulderTip SH2-3 SH3+7 SH4-7 SH5-4 SH7-9 A2-6 L4-4 L7-4 D2-3
below>tummy W5+3
below>underarm A2+4 A5-3
below>upperBack A4-6 K5+4
below>waist N4-3 N7-3 B2-6 B4-3 B5-5 B7-3 B14-4 A2-4 K6-5 W1-15 W2+8 W3-13 W4-13 W5-4 W6-4 W10+4 W12+10 L2-4
below>waistDart B7-7 W12+10
bendElbow SH5-3 A1-4 K5-6 L1-4 L3-6 L4-4 L5-4 D3-3 L8+20 L9-3 D2-3 D7-4
bendElbow&cannot SH8-3 B7-3 B11-5 A1-5 A4-3 A5-3 W7-3 W8-4 L3+5 L4-4 L5-7 D3-5 L6-5 L8+6 D4-4 X1-4
bendElbow&dig A5+4 L3-3
bendElbow&elbow W8+3
bendElbow&fold A5+4 L3-4 L8+3
bendElbow&front A5+4 L8-3
bendElbow&grip L3-10 L8+8 D7-3
bendElbow&meal L3-3 L8+6
bendElbow&pinch L8+5
bendElbow&pull L3-7 L8+11 D2-4
bendElbow&reach SH5-4 A4+5 K1+4 K3-3 K4-3 K5-8 K6-3
bendElbow&rise L1-7 L4-3 D3-4 L8+13 L9-4
bendElbow&sCurve W8+4
bendElbow&sideSeam W8+5 L8-7
bendElbow&sleeve A1-4 K1-7 L1-5 L3-5 L4-5 L6-3 L8+18 L9-3 D1-3 D2-4 D7-5
bendElbow&strain L3-8 L8+8 D2-3
bendElbow&tight L3-13 L8+13 D7-4
bendElbow&tilt SH8-4 B7-4 B11-5 A1-5 A4-3 A5-3 W6-3 W7-4 W8-4 L3+6 L5-7 D3-6 L6-3 L8+4 D4-4 X1-4
bendElbow&uneven W8+4
bendElbow&wrist L8+3
bendOver N1+10 N2-7 N3-3 N5-4 N6-4 SH3-4 SH5-6 SH6+7 B1-4 B8-4 B12-4 W6+5 W7-4 W8+4 W11-4 D6-4
bendOver&bust B1-3 W8+4
bendOver&fullBust B1-3 W8+4
bendOver&gape N1+5
bendOver&grip N1+7 N2-4 N5-4 K1-3 L8-3
bendOver&hem W6+8 W7-5 W8-7 W11-6
bendOver&neck N1+7 N2-5 N5-4
bendOver&shoulderSeam N6-4 SH2-3 SH3-7 SH4-4 SH5-7 SH6+10 SH7-3
bendOver&show N1+6 B12-3 D6-4
bendOver&sideSeam B1-3 W6+6 W7-4 W8+5 W11-3
bendOver&tight B1-3 W8+4
beside N1+4 N4-3 N5-5 SH4-5 B4-6 B10+5 A4+8 A5-7 W10-3 L1-4 L2-4 L3-4 L6+6 D1-4 D2+3 D5-4 D7-4 X2-3
beside>apex B4-7 B5-13 B6+9
beside>arm B10+3 A4+3
beside>armhole B8-3 B9-3 A3-3 A4+4
beside>back A4-4 K1+3 K3-3
beside>backArmhole B10-4 A4+7
beside>bust SH6+3 B3-4 B8+4 B11-3
beside>centre K2-4 W2+3
beside>chest SH6+4 B3-4 B9-4 B11-4
beside>collar N1-3 N6+5
beside>frontArmhole SH1-4 SH8-4 B6-4 B10+10 B11-3 A4-7 A5-9 L6-4 D4-3 X3-3
beside>frontNeck N1+6 N2-5 N5-4 N8-3 B10-4
beside>neck N1+7 N2-6 N6+4 B10-4 A4-4
beside>overarm D7-5
beside>seat W6-5 W9-3
beside>shoulder N4+4 N6-4 SH2-3 SH4-4 SH5-3 K3-3 L1+3 L3-3
beside>shoulderSeam SH3-4 SH4-3 SH5-5 SH6-6 L1-4 L2-5 L3-3 L4-4 L5-3 L6+6 L7-5 D1-4 D2-4 D6-3 D8-5
beside>sleeve SH3-4 B10+3 A4+5 L4-4 D5-3
beside>sleeveCap SH6-3 B15-3 K4-4 W3-3 L2-11 L3-5 L6+6 L7+4 D2-7 D7-3 D8-6
beside>sleeveSeam SH3-3 L4-4 L7+3 X2-5
beside>throat N1-4 N2+6 N3-4 N5-4 N6-4 N7-6 N8-4 SH1-4 SH8-3 B3-4 B8-4 B10-4 B13-4 B14-3 A3-3 A4-5 W4-4 D3-3 L6-4 X3-6 X4-3
beside>tummy W6+3
beside>underarm B5+5 B6-5 B7-3 A1-4
beside>upperChest SH6+4 B3-3 B9-4 B10-4 B11-4
beside>vNeck N1+7 N2-6 N5-3 A4-3
beside>waist B4-6 B5+7 B6-7 K6-4 W1-5 W2-4 W3-6 W4-5 W5-4 W12-4 L6-3
between N1-4 N2-5 N3+5 N4-6 N5-4 N8-5 SH2-4 SH5-4 B1-4 B2-5 B3-3 B4-5 B5-3 B6+6 B7-5 B8-7 B9+4 B11+15 B14-5 B15-6 A1-6 A5-3 K2-5 K4-7 K7-6 W3+4 W5-4 W10-4 L2-5 L3-7 L4-5 L7-3 L8-4 L9-4 D2-3 X1-4 X2-5 X3-3
between>apex B4-3 B6+3
between>arm N3-3 N6-3 SH3-3 SH5-5 B3-5 B6-4 B9-3 A1-4 A5+3 K1-6 L2-4 L3-7 L4-5 L7-4 D1+5 D5-4 D6-4 D7-5
between>armhole B11+4
between>back K2-3
between>blade B11-5 K1+6 K3-4 K4-4 K5-4
between>bust B3-5 B11-5 A5+4 D1-4
between>chest B3-4 B11-4 A5+4 D1-4
between>dart B4-5 B5-5 B6+8 B7-4 B11-3 X3-3
between>dartTip B4-4 B5-6 B6+9 B7-8 B11-4 X3-5
between>frontArmhole N3-3 N6-4 B1-3 B6-4 B8-8 B9+6 B10-7 B11+8 B12-4 B14-4 B15-4 A1-4 A2-4 A5-11 K1-4 K2-4 K5-5 W3-5 L2-3 L7-4 D4-3 X2-4
between>neck N1-4 N2-4 N3-6 N5-5 N6-4 B10+6 B15-3 A4-4 K5+4 W5-3
between>neckSide N6+4
between>sleeve N3-3 SH3-3 SH5-4 B3-4 B6-5 B9-3 A1-4 A5+3 L1-3 L2-4 L3-8 L4-5 L7-4 D1+5 D5-4 D6-4 D7-5
between>sleeveHem K1-4 D7+4
between>upperBack B11-3 K1+6 K5-4
between>waist N3-5 K5+4 W5-3
big N2-6 N3-5 N4-4 N5-5 N6-4 N7-4 N8-4 SH1-6 SH2-4 SH4-5 SH5-4 SH6-4 SH7-6 SH8-4 B1-4 B2-5 B3-5 B4-4 B5-4 B6-3 B7-5 B8-9 B9-4 B11-4 B12-4 B13-4 B14-5 B15-4 A1-8 A2+4 A3-5 A4-4 A5-4 K1-4 K2-5 K3-5 K4-4 K5-6 K6-5 K7-4 W1-6 W2-6 W5-5 W6-4 W7-4 W8-4 W9-4 W10-4 W11-4 W12-4 L1-4 L2-5 L3-5 L4-5 L5-4 D3-4 L7-3 L8-4 L9-6 D1-5 D2-4 D4-5 D5-6 D6+5 D7-5 D8-3 X1-5 X2-6 X3+19 X4-4
big&bust B1-4 B3+7 X3-4
big&cannot K1+5
big&dart B6+4
big&front N2-4 N5-4 SH6-4 B2-4 B8-4 B10+6 B14-4 A2-4 A4-5 A5-4 W10-3 L6+4 D6-3 X3-7
big&frontArmhole B8-4 A2-4 L3-4 L4-5 L6+7 L7-3 D6-6 X3-4
big&frontNeck N1+8 N2-6 X3-6
big&neck N5+3 X3-4
big&outward N1-3 SH1-3 B3-3 B6-4 B10-3 A2-5 K1-3 W3-3 W4-4 D6-4 X3+6
big&reach A1-4 A2+5 L7-5 X2-4
big&shoulder SH3+5 X3-7
big&sleeve SH3-3 B8-4 A2-4 L2-4 L4-5 L6+5 L7-3 D1-5 X3-9
big&sleeveHem B3-4 A1-3 A2-7 W4-4 L2-3 L6-5 L9-8 D4-5 D6+10 D7-8 X3-11
big&tight A1-4 A2+5 L7-5 X2-4
big&tilt K1+5
big&underarm A1-4 A2-6 L6-3 L9-4 D6+5 D8-3 X3-6
big&waist B3-3 K6-6 W1-9 W2-7 W5-5 L7-4 D6-4 X3-13
big&wavy D6-5 D8+6
big&whole B3-3 W4-3 D6-4 X1-3 X2-7 X3+10
blade A3+5 K1+9 K2-3 K4+7 K5+7 W2-5
blade&bunch N4-7 A5-3 K1-9 K2-4 K3-4 K4-5 K5+9 L2-3 D4-3
blade&fold K4+4 K5+7 W2-6
blade&gape B8-7 A3+9 K4-4 D1-4
blade&grip K1+6 K4-4
blade&long K2+4 K4-4 W2-6
blade&loose A2-4 A3+6 K2-5 K5+3
blade&open B8-5 A3+6
blade&outward K4+6 W3-3
blade&past K5+6
blade&pull K1+3 K4+5 K5-4
blade&reach K4+5
blade&short SH4-4 B2-3 A3-4 K1-4 K3+6 K4-5 K5-5 W1-5
blade&side K1-4 K4+5 W9-3
blade&slant K1-8 K4+9
blade&sleeve B10-4 A4+7
blade&stickOut SH7-5 A3+4
blade&strain K1+6 K4+7
blade&swing K4+4
blade&tight K1+9 K5-6 X2-3
blade&tilt K1-4 K4+6
blade&underarm A1-6 K1-5 K4+7
blade&upright B10-4 A4+7
blade&waist K1-3 K4+7 W2-5 W3-6
blade&wide A4+5 K1-5 K5-4
blade&wing A3+4 K4-4 D1-5
bodice N8-4 SH2-4 SH3-4 SH4-4 B2-8 B4-4 B9-4 B14-5 K3-5 K5-4 W1+14 W2+14 W3-5 W4-6 L1-5 L3-8 L4-4 L5-3 D3+5 L6-10 L7+8 L8-4 D7-6 D8-4 X1+6
bodice&cannot W1+5 W2-7 W3-5 W4-4 L1-4 L5-4 D3+6 L7-3 L8-4
bodice&cutInSleeve D3+5
bodice&fold W1-4 W2+4
bodice&gape SH1+5 SH2-5
bodice&long N1-4 N7-3 N8-3 SH1-3 SH3-7 SH8-4 B4-9 B8-3 B9-8 B10-4 B14-9 A1-3 A2-3 K2-5 K5-9 W1-6 W2+18 W5-4 W11-6 W12-4 L2-6 L5-3 D3-5 L7-8 L9-5 X1-4 X2-3 X3-4 X4-3
bodice&loose W1-3 W2+4 W4-4 X1+6 X3-4
bodice&pucker W1-4 W2-4 L3-3 L4-4 D3-3 L6-10 L7+10 D6-4
bodice&reach D3+4
bodice&rise L1-3 D3+10
bodice&seam X1+5
bodice&short N2-3 SH4-7 B2-10 B5-3 A1-3 K3-9 W1+15 W9-3 W10-3 L1-6 D3-6 L9-6 D2-3 X1-5
bodice&sleeve A1+4 W1-6 W2-3 L1-4 L3-6 L5-4 D3+6 L6-6 L7+5 L8-5 D1-3 D6-4 D7-4
bodice&sleeveHem W1-5 L9+7 D7-5 D8-5
bodice&sleeveSeam L4-3 L6-7 L7+7
bodice&tight A1+5 L3-4 D7-3
bodice&twist W1-4 W2-4 L4-7 X1+13
bodice&waist W1+5 W3-6 W4-6
bodice&wavy A1-3 A2-3 L7+4
bone N2-4 N5-4 N6-6 N7-5 N8-5 SH1-5 SH2-5 SH4+4 SH7-4 SH8-3 B1-3 B2-5 B3-3 B4-4 B7-3 B8-4 B10-4 B11-3 B12-3 B14-3 B15-4 A1-4 A3-3 A5+5 K1-4 K3-4 W1-6 W3-4 W5-4 W6-4 W7-3 W8-4 W9-3 W10-3 L1-4 L3-3 L5-3 D3-3 L7-3 L8-4 L9-3 D2-4 D5-4 D7-4 X1-3 X2-4
bone&shoulderSeam N5-3 N6-6 N7-4 SH1-4 SH2-3 SH4+5 SH7-3 B2-4 A5-4 W1-6 L1-3
borrowed N1-5 N2-6 N3-5 N4-5 N5-8 N6-6 N7-6 N8-6 SH1-6 SH2-8 SH3+10 SH4-12 SH5-8 SH6-7 SH7-6 SH8-7 B1-4 B2+6 B3-5 B4-5 B5-5 B6-5 B7-5 B8-5 B9-5 B10-7 B11-7 B12-6 B13-5 B14-9 B15-6 A1-4 A2-4 A3-5 A4-5 A5-7 K1-5 K2-5 K3-5 K4-5 K5-5 K6-5 K7-5 W1-5 W2-4 W3-6 W4-5 W5-6 W6-6 W7-5 W8-6 W9-7 W10-7 W11-5 W12-6 L1-5 L2-5 L3-5 L4-6 L5+7 D3+6 L6-5 L7-5 L8-5 L9-5 D1-7 D2-6 D4-5 D5-5 D6-6 D7-5 D8-6 X1-7 X2-5 X3-5 X4-6
borrowed>shoulder SH3+4
bothSides N1-4 N2-3 N5+5 B4-4 B5-5 B6+6 B7-5 L1+7 L3-3 D1-3 D2-4
bothSides&chest B10+4
bothSides&down L1+4 D2-4
bothSides&fold L1+5
bothSides&low L1+4 D2-4
bothSides&misses SH3-3 SH7+5
bothSides&neck N1-3 N5+6 B15+3
bothSides&oneShoulderLow SH8-4 B15-4 L1+7 L3-6 L4-4 D2-4
bothSides&oneSide SH7+7
bothSides&pull SH2+3 L1+4
bothSides&shoulder SH4-4
bothSides&shoulderTip L1+4 D2-4
bothSides&show N5+5
bothSides&side N5+3
bothSides&sleeve L1+8 L3-4 D2-5
bothSides&smallBust SH3+5 SH4-4 B3-4
bothSides&strain L1+7 D2-3
bothSides&strap N1-4 N5+7
bothSides&swing SH7+5
bothSides&tight L1+6 D2-3
bothSides&tilt L1+3
bothSides&tip SH2+4
bothSides&underarm SH1+3
bothSides&upright B10+3
bra N5-4 B4+3 B5-6 B6-4 B7-5 B8+11 A1-5 A2+6 A5-3 D3-3 D4-5 D6+8 X2-10
bra&dartTip B4+8 B5-6 B6-5 B7-4 B8-6 A2-5 W12-3 D6-7
bra&fold D6+4
bra&frontArmhole D6-4
bra&grip N1+4
bra&placket N1+4 B8-7 B12+6 A2-4 D6-7
bra&reach N5-4 B4-4 B8+8 A2-6 K1-4 D6-5
bra&sag A5-4 W5-3 D6-6
bra&show B5-4 B8+11 A1-3 A2+6 D4-4 D6+6
bra&side N5-4 B8+8 D6-11
bra&sleeve B8-4 D6+10
bra&sleeveHem B8-8 L9-4 D1-3 D6+7 D7-4 D8-4
bra&underarm B8-11 A1-8 A2+11 D4-8 D6-4
bra&wavy D6+4
bra&whole N1+4 B1+7 D6-3 X2-7
bra&wornOn N1+4 B12-3 D6-3
breathe N3+5 B3-4 B6-3
breathe&bust B3-3
breathe&fullBust B3-3
breathe&loose N3+5 B3-3
breathe&nape N3+6 N8-3
breathe&tight B3-3
broadBack N2-5 N3-4 N4-3 N5-4 N6-3 N7-4 N8-3 SH2-5 SH3-3 SH4-5 SH5-3 SH6-3 SH7-3 SH8-3 B2-4 B4-3 B5-3 B6-4 B7-3 B10-4 B11-7 B12-4 B13-3 B14-3 B15-5 A1-6 A3-4 A4-5 K1+6 K2-4 K3-5 K4-4 K5-4 K6-4 K7-3 W3-6 W5-3 W7-4 W8-3 W9-5 W10-4 W11-3 W12-3 L3-6 L5-3 D3-3 L7-5 L8-5 D2-5 D5-4 D7-6 X1-3 X2-8 X4-4
broadShoulders N1-8 N2-9 N3-8 N4-7 N5-12 N6-9 N7-8 N8-8 SH1-12 SH2-13 SH3+6 SH4+18 SH5-11 SH6-10 SH7-10 SH8-11 B1-7 B2-9 B3-7 B4-8 B5-9 B6-10 B7-8 B8-8 B9-8 B10-11 B11-8 B12-8 B13-8 B14-9 B15-8 A1-9 A2-8 A3-8 A4-10 A5-8 K1-10 K2-8 K3-8 K4-10 K5-8 K6-8 K7-8 W1-8 W2-8 W3-9 W4-8 W5-8 W6-8 W7-8 W8-8 W9-9 W10-9 W11-8 W12-8 L1-8 L2-10 L3-8 L4-8 L5-8 D3-9 L6-8 L7-11 L8-8 L9-9 D1-8 D2-10 D4-8 D5-8 D6-10 D7-8 D8-8 X1-7 X2-10 X3-9 X4-8
broadShoulders&sleeve SH3+6 SH4-5 L1-3
bubble N8-4 B1-4 B4-5 B5-5 B6-5 B7+11 W2-4 W12+7 L1-3 L2+10 L6-6 L7-4
bubble&bust B1-4 B3+6 B4-3 B15-3
bubble&dart B4-7 B5-3 B6-4 B7+3 W9-4
bubble&dartTip B5-7 B6-5 B7+9 W12-9
bubble&fishEye B7-7 W12+9
bubble&loose L2+3
bubble&seat W9-3 W12+5
bubble&sleeve SH7-4 B7-5 K7-3 W12-5 L1-4 L2+11 L3-5 L4-6 L5-3 L6-8 L7-3 L9-3 D1-4 D2-7 D5-3 D6-5
bubble&sleeveCap B7-4 W12-4 L1-8 L2+8 L7-8
bubble&small B4-3 B7+4 W10-4
bubble&tip N8-5 B7+5
bubble&tummy B7+3 W12-4
bubble&waist W2-6 W3-4 W4-3 W12+8 L2-3
bubble&waistDart B7-5 W12+8
bulge K7+5 W6-6 W8+5 W10-4 W12+10
bulge&choke N4+3
bulge&collar N4+3
bulge&fishEye W12+8
bulge&forward SH6-3 W6-5 W8+7 W12-3
bulge&hump K7+6
bulge&nape K7+4
bulge&neck K7+5
bulge&neckSide K7+4
bulge&pointy SH7+3
bulge&sideSeam SH6-4 W6-5 W8+7 W12-3
bulge&strain K7+3
bulge&tip SH7+3
bulge&tummy W10-6 W12+3
bulge&waist W2-5 W12+6
bulge&waistDart W12+6
bunch N3-6 N4+8 SH1-4 SH2-4 A1-3 A2-4 A5+9 K2+3 W1-6 L2+3 D2-3 D4+7
bunch&bust B1-3 B8+4 A5+4
bunch&centre W2+6
bunch&chest A5+4
bunch&cutInSleeve D4+4 D5-4
bunch&dartTip B4-5 B5-10 B6-7 B7+11 A5-6
bunch&ease N4-3 N8-4 SH8-3 B5+5 A5-6 L2-3 L4-5 L6-5 D5+6
bunch&empty N4-4 SH7-4 B3-5 A5-4 K2-3 L7-3 D4-3 X2+6
bunch&extra K2+4 W9-3
bunch&fold N4+5 K5-4 W2+5 W3-4 W4-5 D4+6
bunch&forward N8-5 SH5-4 SH6+4 L6-3 D5+4
bunch&front B13-6 B14+9 A5-5
bunch&frontArmhole B8-9 B10+4 A5+8 D4-4
bunch&hip W2-5 W9+7
bunch&hollowBack K2+4
bunch&lowerBack N4-3 A5-4 K2+10 K6-8
bunch&misses N4-3 SH8-4 B2-3 B5+5 K3-3 D5-4
bunch&nape N3-11 N4+10 N8-4 K7+4
bunch&neck N1-6 N2+5 N3-3 N4+8 N5-8 N6-5 SH8-3 B15-4 A5-6 K2-4 K3-4 K5-5 K7-8 L7-3 D4-5
bunch&neckSide N2-5 N4+4 N6-3 SH2+4 A4-4 K5-4
bunch&oneSide N4-6 N5-3 SH5-3 SH8+10 B9-3 A5-5 K2-4 W2-3 L2-7 L3-4 L4+5 L6-3 L9-3 D4-5 D5-5
bunch&outward B9+5 B14+5
bunch&peak SH7-4 L2+4
bunch&seam SH5+3
bunch&seat K2+4
bunch&shoulderSeam N6-4 SH3-5 SH5-7 L2+5 L4-4 L6-4 D5-3
bunch&shoulderTip SH7-4 L2+4
bunch&sit K2+4 W9-3
bunch&slant N4-3 SH1+9 A2+6 A5-4 D4-3
bunch&sleeve N4-5 SH3-4 SH5-5 SH6-4 SH8-4 L2+6 L6-6 D1-4 D4-3 D5+3 D6-3
bunch&sleeveCap L2+4
bunch&small N2-4 N3-6 N4+8 K7-5
bunch&swing SH1+4 W2+5
bunch&tight N2-3 B3-4 A5-4 K2-3 K7-3 X2+5
bunch&underBust B13+4 B14+9 A5-6
bunch&underarm N4-3 A1-8 A2-7 A5-10 D4+16
bunch&upperBack N2-5 N4+5 N6-4 N7-3 A4-6 A5-4 K1-6 K3-6 K5+3 K6-3 D4-3
bunch&upperChest B9+10 B11-8 A5-3
bunch&upright N4-5 SH5-6 B10+8 B13+5 B14-4 A4+8 A5-8 K2-7 K3-3 K5-3 K6+5 W2-5 W3-6 W4+6 D4-5
bunch&waist N4-4 A5-5 K2-4 K6-3 W1-15 W2+4 W3+3 W5-3 W9+4 L2-3 D4-5
bunch&whole L6-3 D5+4
bunch&widerHips W2-5 W9+6
burst N7-4 B6-6 B11-3 B12+11 A4-5 K1+7 K3-6 K4-6 K5-3 X2-4
burst&chest B12+4
burst&neck B12-3
burst&placket B1-4 B12+8 K1-3
burst&upperBack K1+7
bust B1+12 B3+7 B12+3
bust&bustDart B1-4 B4+5
bust&chest SH6+4 B1+4 B3-3 B10+3 B11+5 A5+3
bust&choke B15+3
bust&dart B1-5 B3-4 B4+5 B6-4
bust&dartTip B1-4 B5-4 B6+4
bust&dig B1+6 B3-6 B11+4 A1-3 A5-4
bust&down B1+5 B3-5 B5-4
bust&empty B1-5 B3+7
bust&extra B1-6 B3+8 B6-4 B13-4
bust&fold B1-8 B3+9 B9+4
bust&forward W6-5 W8+6
bust&front N5+5 SH3-5 SH6-4 B11-5
bust&frontArmhole B1-4 B11+4 A5-3
bust&frontWaist B2+4
bust&gape B1-4 B3-3 B5+4 B13+5
bust&grip B1+5 B3-5
bust&high B1-6 B3-4 B5+5 B13+3
bust&inward B5-4 B6+4
bust&long B1-6 B2+4 B9+5
bust&looksPregnant B1+5 B3+4 W10-6
bust&loose B1-11 B3+10 B6-4 B13+4 X3-8
bust&low N8-4 B3-7 B5+6 B13-4 A2-4 W2-3 W5-4
bust&misses N5+6 SH1-8 SH2-4 SH3+5 SH4-4 SH5-3 SH6-4 SH7-3 SH8-4 B1-6 B3-8 B12-3 B13-3 B14-3 B15-4 A5-3 X4-4
bust&narrow B1+4 B3-7 B10-4 B11+7 K1-3 X2-4
bust&neck N2-6 N5-4 B1-7 B2-4 B3-3 B15+6
bust&neckSide B1-4 B15+8
bust&oneShoulderLow SH8-4 B1-7 B3-4 B15+7
bust&open B1-5 B12+6 B13+5
bust&outward B2+6 B3-6 B5-3 B9+4 B15-5 W3-3
bust&past B3-3 B4+5 B5-4 B6-6
bust&pinch B1+3 B3-4
bust&placket B1-6 B3-4 B11-4 B12+8 B15-4
bust&pull B2+5 B3-4 B11-4 B15+5
bust&reach B1+6 B3-5 B5-3
bust&rise B1-3 B2+5
bust&sag B1-8 B3+4 B5+3 W5-3
bust&shortWaisted B1-6 B2-4 B15+7
bust&shoulder N5+6 SH2-4 SH3-6 SH4-7 SH6-4 B1-6 B2-5 B5-3 B15+4 D2-3
bust&shoulderSeam SH3-4 SH6+4 B1-6 B15+4
bust&side B1-4 B2+7 B15-5 W3-3
bust&sideSeam W6-5 W8+8
bust&sit SH6+3
bust&slant B1-4 B2+8 B15-5 K4-3
bust&sleeve B3-4 B11-3 A5+6
bust&small B1+4 B3-10 B11+6 X2-6
bust&stickOut B4+7 B5-5 B6-3
bust&strain N2-4 B1+9 B3-6 B10-6 B15+5 W8-5
bust&swing SH6+3 B1-6 B5-3 B9-3 B10-3 B11-3
bust&tight B1+8 B11-3
bust&tilt B1-3
bust&tummy W8+4
bust&underBust B1-6 B3-7 B5-5 B13+7 B14+3
bust&up B2+4
bust&upperChest B1-4 B3-5 B9+4 B10-4 B11-4 B15-4
bust&upright B3-5 B10+7
bust&waist B1-4 B2+5 W3-5 W9-4
bust&wavy B1-5 B8+4 B9+4
bust&whole B1-3 B3+5 B13-3 W9-6 X3-6
bust&wide N5-4 B1-11 B3-9 B5-4 B6+11 B9-4 B10+7 B11+3 B12-4 B13-7 B15-3 A4-4
bustDart B4+6 B5+11 B6+10 B7-4 W1-3 W3-4 W4-3 W12-5
bustDart&dartTip B4-4 B5+5
bustDart&fullBust B1-4 B4+5
bustDart&high B4-4 B5+9 B6-6
bustDart&inward B4-5 B5-7 B6+9
bustDart&long B4+15 B5-16 B6-10 B9-3 B14-4 K5-3 W2-4 W12-3
bustDart&low B4-10 B5+11 B6-7
bustDart&misses B4-9 B6+12
bustDart&narrow B4-4 B5-5 B6+7
bustDart&outward B4-8 B5-7 B6+10
bustDart&past B1-3 B4+8 B5-9
bustDart&sit B5+5 B6-3
bustDart&stickOut B4+4 B5-3
bustDart&swing B4+7 B5-7 B6+4
bustDart&tight B1-4 B4+5
bustDart&tip B5+3
bustDart&underBust B4-6 B5+8 B6-7 B13-6
bustDart&upperChest B4-6 B5+7 B6-5
bustDart&wide B4-3 B5-4 B6+5
cannot N4-7 N8-5 SH6-3 B1-3 B4-3 B11+5 K1+10 W2-6 W3-3 W12-4 L4-5 L5+10 D3+5 L9-8 D1-4 D6-4 X1-4
cannot&choke N2+6 N7-3 SH3-4 A2-3 K5-3 K7-4 L2-3 L4-4 L5-5 D3-3 L6-8 L9-4 D4-3 D6-4 D7-6 D8+5 X1-3
cannot&cutInSleeve L5-9 D3+7
cannot&dartTip B7+4
cannot&dig B7+3
cannot&down W2-4 W9+7
cannot&ease N2+5 K1-4 L3-4 D3-3 L6+6 L7-4
cannot&flat B7+5
cannot&fold L3-4 L5+4 L8+4
cannot&gape B8-3 A1+6 K1-4 W8-3 L3-5 L5-4 D3-3 D1-6
cannot&grip L5+3
cannot&high L5+5 D3+4
cannot&hip W9+5
cannot&low A2-3 W9+6 L5+5
cannot&pucker L6+4 L7-3
cannot&reach SH2-3 B7-4 B10-3 B11-7 K1+14 K7-3 W1-3 D3-4 L6-3 L8-6 D4-3 X1-4 X3-3
cannot&rise W1-4 L1-4 L5-3 D3+6 L8-4
cannot&seat W9+6
cannot&shoulderBack N2-4 N3-3 N5-4 N8-4 SH1-4 SH2-5 SH3-3 SH4-4 SH5-4 SH6-3 SH7-4 SH8-6 B2-3 B3-3 B7-5 B11+11 B12-3 B15-3 A3-4 A4-6 K1-9 K2-4 K3-5 K4-4 K5-4 K6-4 K7-3 W5-4 W6-4 W7-5 W8-3 W9-3 W11-4 L3-3 L4-3 L5-7 D3-7 L6-4 L8-5 L9-4 D2-3 D4-5 D5-3 X1-5
cannot&sit N2+3
cannot&sleeve L4-6 L5+7 L9-5 D1-5 D6-3
cannot&sleeveCap L5-4 D3+3 L6+4
cannot&sleeveHem N2-4 B11-3 K1-5 L2-3 L3-3 L4-4 L5-5 D3-3 L6-4 L9-6 D1-4 D2-3 D6-6 D7+7 D8+3
cannot&slide N5-3 N8-3 X2+3
cannot&tight L3-4
cannot&tilt B11+6 K1+8 L4-3 L5+6 D3+4 L9-5 D4+3 X1-4
cannot&wavy L5+5
cannot&whole N7-3 N8-4 B7-3 B11-4 K1-5 W1-4 W7-3 L5-5 D3-6 L8-3 D2-3 D4+7 X1-5 X3-5
cannot&widerHips W9+5
catches N1-4 N2-3 N3-4 N4-4 N5-4 N6-4 N7-4 N8-4 SH1-4 SH2-3 SH3-6 SH4-4 SH6-4 SH7-4 SH8-3 B1-3 B2-4 B3-4 B4-4 B5-4 B6-4 B8-4 B9-4 B10-4 B11-3 B12-3 B13-3 B14-3 A1-4 A2-4 A3-4 A4-7 A5-4 K1-5 K2-4 K3-4 K4-4 K5-4 K6-4 K7-4 W1-4 W2-5 W3-4 W4-3 W5-4 W6-4 W7-4 W8-4 W9+11 W10-4 W11-5 W12-5 L1-5 L2-5 L4-7 L5-5 D3-5 L6-8 L7-4 L8+6 L9-4 D1-6 D2+6 D4-4 D5-5 D6-5 D7-4 D8-4 X1-5 X3-4 X4-4
catches&elbow W9-4 L8+7
catches&fullBust B15+4
catches&hip W2-3 W9+6
catches&neck B15+4
catches&neckSide B15+4
catches&sag B15+4
catches&seat W9+7 W11-4
catches&shoulder B15+4
catches&sleeve SH3-5 SH5-5 SH7-3 B15-3 A1-4 W9-4 L1-5 L2-5 L4-7 L5-4 D3-3 L6-8 L7-4 L9-4 D1-7 D2+7 D5-4 D6-5 D7-3
catches&widerHips W9+4
centre N1-3 N2-4 N4-5 N5-4 N6-4 N7-4 N8-5 SH1-4 SH2-4 SH3-4 SH4-4 SH5-3 SH6-3 SH8-5 B1-4 B3-4 B4-6 B5-9 B7-3 B8-4 B9-4 B10-4 B11-4 B12-3 B13-4 B14-5 B15-3 A1-3 A2-4 A3-4 A4-4 A5-4 K1-4 K2+3 K4-4 K5-6 K6-4 K7-3 W1+5 W2+5 W3+10 W4+13 W5+4 W6-4 W7-4 W8-3 W9-4 W10-4 W11-3 W12-4 L2-4 L3-3 L4-4 L5-3 D3-5 L7-3 L8-4 L9-9 D1-3 D2-5 D5-4 D6-4 D7-4 D8-4 X1+10 X2-5 X3-8 X4-3
centre&fold N4-3 B2+4 W1-5 W2+4 W4-5 W5-4 X1-4
centre&forward N8-5 W2-8 W4-5 W5+11
centre&front N5-3 N8-4 B2+4 B14-6 A5-3 W1-4 W2-4 W3-5 W4-6 W5+8 W6-3 W9-3 W10-3 X1+9
centre&frontWaist B2+4 W1-5
centre&gape N6-3 B8-4 A3-4 W2-4 W3-3 W4+7 D1-4 X1-4
centre&high B5-4 A1-3 K3-6 W1+9 W2-6 W3-7 W4-8 W5-4 L1-4 X1-6
centre&long B9-3 B14-4 K2+6 K5-5 K6-3 W3-4 W4-5 W5-3 X1-4
centre&loose N1-4 N8-3 SH1-5 SH8-4 B2-3 B3-5 B6-3 B8-4 B13-6 A2-3 A3-3 A4-4 K2-6 K6-3 W1-5 W2-3 W3-9 W4+13 W5-9 L2-3 X1-9 X3-9 X4-3
centre&low N8-5 SH3-3 SH8-3 B5-5 A2-6 K2-4 W1-5 W2+10 W3-7 W4-10 L1-5
centre&oneSide N5-4 B2-4 W5-3 W9-5 X1+5
centre&outward N5-5 N8-3 B2-5 B6-5 W1-3 W2-5 W3+6 W4-7 W5-4 W8-3 L4-4 X1+5
centre&peak W5+5
centre&pull B2-3 W1-4 W2-4 W3+7 W4-7 L1+3 D2-4 X1-4
centre&rise B2+5 K2-4 W1+3 W2-5 W3-4 W4-5 W5-5 L1+7 D3-6 L9-6 D6-3 D7-4 D8-4 X1-7
centre&sCurve N7-3 W3-4 W8-3 L4-3 X1+6
centre&sag B2-4 B14-5 A2-3 W3-4 W5+9 X1-6
centre&sit W1+4 W3-6 W4-4 W5-4
centre&slant SH8-4 B2-4 K4-5 W3-3 W4-4 W5-6 L1-4 L9-3 X1+7
centre&sleeveCap L1+4
centre&sleeveHem B2-5 K3-5 W1-4 L1+8 D3-5 L9-5 D6-4 D7-5 D8-5
centre&slide N5-6 N7-4 N8-4 B2-6 B6-4 B14-4 W3-6 W4-3 W5-5 W8-3 L4-5 X1+8
centre&strain W2-4 W3+7 W4-6 X1-3
centre&swing N5-3 N7-3 B2-5 K1-4 K2-4 K3-4 W3-3 W4-4 W5-6 W6-3 W7-4 W9-5 X1+8
centre&tight N2-3 SH2-3 B1-5 B6-4 B11-3 A1-4 K1-5 W1-5 W2-6 W3+10 W4-9 W5-5 L3-4 L8-4 D7-3 X1-6 X2-7
centre&tilt SH1-4 SH2-3 SH8-5 B2-8 K2-4 K3-4 K4-5 W1-4 W2-4 W3-6 W4+5 W5+4 W6-4 W7-5 L1-5 L4-3 L9-5 X1+5
centre&uneven B2-5 W5-4 X1+4
centre&waist K2+4 K5-4 W3-5 W4-4
chest SH6+4 B1+4 B4-3 B6-3 B9-4 B11+5 B15-4 A5+3
chest&dig B1-4 B11+4 A5-4
chest&empty SH6-3 B1-3 B3+8 B9-6 B10-4 B11-4 W4-3 D1-3 X3-4
chest&extra B3-9 B11-3
chest&front B1+4 B11-4
chest&frontArmhole B1-4 B11+4 A5-4
chest&gape N1+4
chest&long B1-6 B3-4 B9+6
chest&loose SH6-3 B3+6 B9-6 B11-6 B13-3 W4-3 X3-5
chest&narrow B1-10 B10-4 B11+9
chest&neck N1+4
chest&placket B1-4 B3-4 B11-5 B12+5
chest&shoulderSeam SH3-4 SH5-3 SH6+5 B1-3
chest&side SH6+3
chest&sleeve B3-4 B11-3 A5+6
chest&small B1-4 B11+7
chest&strain B1+5 B3-3 B10-8 B12-3 B15-4 A5-3
chest&tight B1+7 B3-4 B11-12
chest&upright B3-8 B10+8
chest&wide B1-6 B3-11 B6-7 B9-5 B10+8 B11+4 B12-3
choke N1-3 N2+25 N3-8 N6-3 N7+7 N8-7 SH1-5 SH2-3 SH3-3 SH4-3 SH5-5 SH6-5 SH7-3 SH8-4 B1-3 B2-5 B3-4 B4-4 B5-3 B6-4 B7-3 B8-4 B9-3 B10-6 B11-4 B12-3 B13-4 B14-5 B15-4 A1+3 A3-4 A4-4 A5-4 K1-4 K2-4 K3-5 K4-4 K6-3 W1-4 W2-3 W3-4 W4-3 W5-4 W6-3 W7-4 W8-3 W9-3 W10-4 W11-4 W12-3 L1-4 L2-4 L3-4 L5-4 D3-4 L7-4 L8-3 L9-5 D2-4 D4-4 D5-7 D6-4 D7-4 X2-3 X3-6 X4-4
choke&collar N2+5 N3-7 N8-4
choke&cutInSleeve D5+7
choke&ease N1-4 N2+4 N4-4 N5-4 N6-4 N7-5 SH1-3 SH2-3 SH3-4 SH4-4 SH5-3 SH6-3 SH7-3 SH8-3 B1-3 B3-4 B4-3 B5-5 B7-3 B8-4 B9-4 B10-3 B11-4 B12-3 B14-4 B15-3 A1-5 A2-4 A3-4 A4-3 A5-3 K1-3 K2-4 K3-3 K4-3 K5-4 K6-3 K7-4 W1-3 W2-3 W3-3 W4-3 W5-3 W6-4 W7-3 W8-3 W9-4 W10-3 W12-3 L2-4 L4-3 L5-5 D3-3 L6+5 L7-5 L8-3 L9-3 D1-3 D2-3 D4-5 D5-3 D7-4 D8-4 X1-4 X2-4 X4-4
choke&extra N5+5
choke&fold N4+3 D5-5
choke&forward N1-3 N2-5 L4+4 D1-3
choke&front N1+4 N2+12 N4-3 N5-4 N7+4 N8-5 B2-9 B8-3 B11-5 A1-3 A5-5 K5-3 K7-3 W5-5 W6-4 W10-5 L4-5 D5-4 X1-5
choke&gape N2-4 N6+4
choke&hang N1-3 N2-6 L4+4 D5-4 D7-4
choke&hem W6+3
choke&high N7+5
choke&hump N2-4 K7+4
choke&long L4-4
choke&loose N1+3 N2+5 N5-5 SH1-4 SH8-4 B3-4 B8-4 B13-4 B14-4 A2-4 A4-3 K2-4 K7-3 W4-6 W6-3 L4-3 D3-3 X1-4 X3-8 X4-3
choke&nape N1-3 N2-7 N3-5 N4-5 N5-3 K3-4 K7+5
choke&neck N1-6 N3-4 N4-4 N5-4 N8+4 K7-7 L4-3
choke&oneSide SH8+5
choke&outward N2-6 N5+6
choke&pointy B6-4
choke&pull N2-5 N7+5 K1-5 K4-4
choke&rise N2-6 N3-4 N4-4 N5-4 K3-5 K7+5
choke&sag N2-5 N7+5 B14-3 W5-3
choke&seat L4-3
choke&short N2-4 N4+5
choke&shoulderSeam N1-3 N6+4
choke&side N4+3
choke&sideSeam W6+3
choke&sit N2+11 N6-3 N7-7 SH8-3 B5-4 B9-4 B12-4 A1-4 W1-4 W2-4 W9-3 X1-3
choke&sleeve N2-8 N7-3 SH5-4 B10-4 A1+7 L1-3 L2-5 L3-7 L4+6 D3-3 L6-4 L7-3 L9-5 D1-6 D2-4 D5-6 D6-5 D8-4
choke&sleeveCap D5+4
choke&sleeveHem N2-5 SH3-3 A1-5 L4-5 D1-4 D5-4 D6-5 D8+3 X1-3
choke&slide N2-4 N7+6 N8-6
choke&small N2+4
choke&tummy N4+4 W6+4
choke&underBust B13-3 B14+6
choke&uneven SH8-4 D5-7 D8-5 X1+4
choke&upperBack A4-4
choke&waist W1-3 W3-5 W4+5
choke&whole N7+4
choke&wide N1-4 N2-6 N3-4 N5+8
choke&wing N2-4 SH1-6 SH8-3 B8-4 A1-3 A2+4 A3-3 W4-4 D1+5 D4-5 X1-4 X3-4
collar N1+7 N2+4 N3-4 N5+7 N7-4 N8-6 SH3-4 B6-3 K3-4
collar&extra N2-3 N5+5
collar&fold N2-4 N4+4
collar&front N1+6 N2-7 N5-3 N8-4
collar&gape N2-4 N6+4
collar&hump N2-4 K7+4
collar&loose N1+6 N2-7 N5-3
collar&nape N1-4 N2-5 N3+3 N4-3 N5-4 K3-4 K7+4
collar&neck N1-3 N2-3 N4-3 N8+5 K7-6
collar&outward N2-6 N5+6
collar&pointy B6-4
collar&rise N2-6 N3-4 N4-4 N5-4 N7-5 K3-4 K7+5
collar&seat N8-4
collar&short N2-4 N4+6
collar&shoulder N1-5 N2-3 N3-4 N4-4 N5+9 N6-4 SH3-6 SH4-4 K7-4
collar&shoulderSeam N1-4 N6+4
collar&sit N2-5 N5+4
collar&slide N8-4
collar&small N2+4
collar&wide N1-5 N2-7 N3-5 N5+8
collarbone N1+3 N5-4 N7-4 N8-3 SH3-4 SH5-3 SH8+5 B3-3 B4-6 B6+5 B7-5 B9-5 B10-4 B15-3 W12-3 L9-4 D5-3 X1-5 X3-4
collarbone&dart B5-6 B6+7
collarbone&gape N1+4
collarbone&loose N1-3 SH8+6 B3-3 B10-4 B11-3 L9-4 D5-4 X1-4 X3-4
collarbone&neck N1+4
collarbone&slide N7-3 SH6+4
collarbone&swing B4-3 B5-4 B6+5
collarbone&upperChest B11+3
cup B3+6 X3-4
cup&empty B3+3
cup&loose B3+3
cup&smallBust B3+6
cutInSleeve SH4-3 W11-4 L1-3 L2-7 L3-4 L4-3 L5-3 D3+11 L6-10 L7-4 L9-3 D1+8 D2+8 D5+17 D8+5
cutInSleeve&dig SH4-5 D3-3 D5-4 D7+8
cutInSleeve&edge L3-4 D3-4 D1-3 D2-10 D5-5 D7+13
cutInSleeve&extra A2-3 D4+9
cutInSleeve&fold L2-4 L6-6 D5+3
cutInSleeve&forward N8-10 W6-4 L4-5 D3-3 D1-4 D2-3 D5+13
cutInSleeve&gape B8-4 L2-5 D3-4 D1+7 D2-4 D5-6
cutInSleeve&grip D2-4 D7+6
cutInSleeve&hang D5+7
cutInSleeve&hem W11-9 L9-4 D1-5 D2-7 D5-7 D6-3 D7-4 D8+14
cutInSleeve&high W11-5 D8+4
cutInSleeve&hung W11-9 D8+5
cutInSleeve&loose D3+6
cutInSleeve&outward B6-3 L2-3 L4-3 D3-5 D2-6 D5+7 D6-4 D7-5 D8-5
cutInSleeve&pull SH2-3 L3-4 D3+4 D2+7
cutInSleeve&reach D3+5
cutInSleeve&rise D3+11 D2-4
cutInSleeve&sag N7-4 W5-3 W11-5 L1-3 L2-4 D2-3 D5+4 D8+4
cutInSleeve&short SH4-4 B2-4 W1-5 D3-4 L9-4 D2+5 D5-4
cutInSleeve&shoulder SH3-6 SH4-11 D3-3 D2+7 D5-3 D7-4
cutInSleeve&shoulderTip SH2-6 SH4-3 D2+13 D5-3
cutInSleeve&show N5-4 SH2-3 B8-4 L1-3 D3-4 L7-3 D1-6 D5-8 D6+7 D7-4 D8-4
cutInSleeve&side D3+3
cutInSleeve&sleeve L5-4 D3+9 D1-5 D2+4 D5-5 D6-4
cutInSleeve&sleeveCap L2-12 L6-10 L7-7 D1+8 D2+5 D5+10
cutInSleeve&slide N7-7 N8-8 L4-3 D5+12
cutInSleeve&stickOut L2-5 D3-3 D1+11 D2-3 D5-7
cutInSleeve&stickUp L2-10 D3-4 D1+10 D2-4 D5-6 D7-3 D8-4
cutInSleeve&strain SH2-3 SH4-5 L1+4 D2+11 D5-3
cutInSleeve&swing N8-6 W6-4 L4-6 D1-4 D2-3 D5+9
cutInSleeve&tight SH4-6 B12-3 K1-3 L1-3 L3-6 L7-8 L8-4 D1-6 D2+11 D5-9 D6-4 D7+5 D8-4 X2-5
cutInSleeve&tilt L5-9 D3+6
cutInSleeve&underarm A1-3 D4+10 D5-4
cutInSleeve&uneven W11-9 L4-3 D3-4 L9-6 D1-5 D2-5 D5+6 X1-5
cutInSleeve&upperArm L3-5 D3-3 D2+7
cutInSleeve&wavy W11-5 L5-3 D3-4 D8+7
cutInSleeve&wing D1+3
dart B4+7 B5+7 B6+10 B10-4 B13-3
dart&dartTip B4-9 B5-4 B6-4 B7+8
dart&fold B5+4
dart&fullBust B1-4 B3-3 B5+4 B6-4
dart&high B2-3 B4-6 B5+8 B6-9 B7-4 K3-3 W1-4 W12-3
dart&inward B4-3 B5-4 B6+5
dart&long SH3-3 B4+16 B5-13 B6-6 B7-4 B9-4 B14-4 K5-5 W2-6 W12-7
dart&low B4-9 B5+12 B6-9 A2-4 W2-3 W12-6
dart&misses B4-8
dart&narrow B4-3 B6+6 B7-3
dart&outward N5-4 B4-6 B5-5 B6+7
dart&past N5-3 B4+9 B5-8 B7-5 W12-4
dart&peak B7+3
dart&pointy B4-4 B7+4
dart&seat B4-3 B5-3 B7-5 W9-5 W12+6
dart&small B5-3 K6+5 W3-4
dart&smallBust B4-4 B5+3
dart&smooth B5-4 B7+4
dart&stickOut B4+6 B5-4 B6-4
dart&swing B4+3 B5-4 B7-3
dart&tight B1-4 B3-3 B5+3
dart&tip B4-9 B5-4 B6-4 B7+8
dart&underBust B4-7 B5+12 B6-7 B7-5 B13-8 B14-5 W1-3 W12-4
dart&underarm B5-4 B6+5
dart&uneven B4-3
dart&waist B5-4 B6-3 W4-6 W12+4
dartTip B5+10 B6+5 B7+15 B8-4 W10-3 W12-7 D6-4
dartTip&dig B7+5
dartTip&empty SH7-4 B3-4 B5-4 B6-4 B7+6 L7-3
dartTip&flat B4-4 B5-6 B6-5 B7+8
dartTip&fold B4-7 B5-7 B6-5 B7+8 A5-4 K2-3
dartTip&fullBust B1-4 B5-4 B6+4
dartTip&inward B4-6 B5-7 B6+7 B7-6
dartTip&misses SH7-3 B5+6 B6-9
dartTip&outward B1-5 B4-5 B5-7 B6+8
dartTip&past B4+10 B5-8 B6-6 B7-5
dartTip&peak SH7-5 B3-3 B4-4 B5-5 B6-4 B7+6
dartTip&pointy SH7-3 B4+7 B6-7
dartTip&pucker B4-12 B5-7 B6-7 B7+8 W10-4 L6-6 L7-3
dartTip&small B4-4 B7+4 W10-4 X2-3
dartTip&smallBust B3+3 B5-4
dartTip&smooth B5-4 B7+4
dartTip&tight B1-4 B5-4 B6+4
dartTip&tip B4-5 B6-5 B7+6
dartTip&tummy B4-4 B5-3 W10-6 W12+3
dartTip&underBust B4-9 B5+11 B6-7 B7-9 B13-8 B14-6
dartTip&underarm SH1-5 B4-5 B5+3 B6+5 B7-7 A1-6 A2-4 A5-3 L1-4 D4-4
dartTip&upperChest B4-8 B5+10 B6-6 B7-7 B9-4
dartTip&wavy B4-7 B5-10 B6-9 B7+11 D8-5
dig SH2-3 SH4+3 SH7-3 B6-3 B8-4 B11-4 A1+10 A2-4 A5+9 W3+6 L1-3 L3-5 L7-4 L9-3 D2-3 D7+7 D8-3
dig&edge D2-6 D5-3 D7+8
dig&elbow A1-4 L8+6 D7-4
dig&flat B7+4
dig&fold SH8-3 A5+3 L8+3
dig&front N2-5 B8-4 A1-6 A5+4
dig&frontArmhole SH4-4 B1-4 B8-7 B10-4 A1-11 A5+14 L8-4
dig&frontHem N2-4 N7+4
dig&frontNeck N1-5 N2+3
dig&nape N8+6 K7-5
dig&neck N5-3
dig&pinch SH2-4 W4-3
dig&sag N2-4 B8+5 A2-5 A5-4 W5-3 D6-5
dig&seam SH2-5 SH4+4 SH5-3
dig&short SH4-4 B2-3 L3+3 L7-3 L8-4 D7-3
dig&shoulder SH3-8 SH4+12 SH7-7 A1-13
dig&shoulderTip N2-4 SH5-5 SH7-4 A1-5 D2-3
dig&show N7-3 B8+5 A1-4 A2-5 A5-4 W5-3 L3-4 L8-4 D2-3 D6+5 D7-5
dig&sleeve L4-3 D2-4 D6+4
dig&sleeveHem A1-4 L3-4 L9-8 D2-5 D6-5 D7+13 D8-10
dig&throat N1-6 N2+5 N7+4
dig&tight A1+5
dig&tummy W10+6
dig&underarm A1+9 A2-5 D4-7
dig&up N2-6 N3-6 N7+4 N8+6 K7-4
dig&upperArm A1+3 L7-7 D7-5
dig&waist W1-5 W2-4 W3+9 W4-8
dig&wornOn A1+3
down N2-3 SH2-6 B3-4 B5-6 A2-5 K1-4 K3-4 W2-3 W10-3
down&extra A2-4 D4+4
down&fold SH2-5 SH3-3 D4+4
down&front N1+4 N2-4 N8-5 W2-3 X1-5
down&frontWaist W5+4
down&gape B3-4 B4-3 B5-4 B13+4 W12+4 X3-3
down&long SH3-4 W12+3
down&loose B3-4 B5-4 B13+3 X3-3
down&low SH2-5 B5-5 A2-4 K1-3 K3-3
down&pull K1-3 K4+4 L1+3
down&reach B1+4 B3-4 B5-3 K1-3 K4+4 W2-3
down&seat N7-4 N8+3 W9+6
down&shoulder A4+3
down&shoulderTip SH2-5 L1+4
down&sleeve SH2-3 L1+5 D2-5
down&sleeveSeam SH3+5
down&slide N7-4 N8+4
down&tight SH2-5
down&tilt W5+7 X1-4
down&underarm A2-5 A5-4 D4+5
down&upperArm SH3+6 A2-5 L7-3
down&wornOn N7-4 N8+4
ease N4-4 N5-3 N6-3 N7-4 N8-4 SH1-3 SH3-5 SH5-3 SH7-3 SH8-3 B2-3 B3-3 B7-3 B8-3 B9-3 B10-3 B11-3 A1-4 A2-3 A3-3 A4-3 A5-5 K1-4 K2-3 K3-3 K5-3 K7-3 W1-3 W2-3 W11-5 L1-8 L2-5 L3-6 L4-10 L5+3 D3-5 L6+20 L8-4 L9-4 D1-8 D2-4 D6-6 D7-3 D8-5 X1-3 X4-3
ease&fold A5-4 L4-3 L6+4 D4+3 D5-4
ease&front D5+3
ease&misses SH8-3 B5+5 D5-3
ease&sleeve W11-3 L2+4 L3-5 L4-9 L5+5 D3-5 L6+4 L7+4 D1-6 D5+3 D6-5 D8-3
ease&sleeveCap L1-8 L2-13 L6+15 L7-12
ease&smallBust L6+4
ease&tilt L6+4
ease&whole L6-3 D5+4
edge N2-3 N5-4 N6-3 SH1-4 SH5-5 B13-3 A3+6 A4-5 W4-3 L1-6 L2-5 L3-4 D3-4 L7-4 D1-6 D5-5 D7+11 D8-4 X3-6
edge&fold SH3+3 L2-3 D2+3 D7-3
edge&front B8+3
edge&frontArmhole B8+5
edge&frontNeck N1+3
edge&gape SH3+4 SH4-4 D1-4
edge&grip L3-3 D3-3 D2-4 D5-3 D7+7
edge&long N1+3 B8+3 B9-3 W2-4
edge&loose N1-4 N7-3 SH5-5 B3-4 B8+5 B13-3 A2-3 A3+8 A4-5 W4-4 D7-5 X3-6
edge&pull L1-5 D2+7 D7-3
edge&shoulder N5-4 N6-3 SH1-3 SH3+5 SH7-3 B8-4 A3-4 L2-3 D1-5
edge&sleeveCap L1-7 L2-4 L7-4 D2+10 D7-7
edge&tight D7+5
elbow N2-3 SH2-4 SH3+3 SH4-3 B1-3 B4-4 B5-3 B6-4 B11-3 A1-3 K1-3 W3-3 L3-5 L4-6 L6-4 L7-4 L8+20 D2-3 D7-4 D8-5 X2-4
elbow&fold A5-4 L8+4
elbow&front SH6-3 B10+4 B14-4 A5-4 L8+4
elbow&grip L8+5
elbow&pinch L8+3
elbow&pull L8+8
elbow&rise L8+3
elbow&sCurve W8+4
elbow&sideSeam W8+5 L8-7
elbow&sleeve L3-5 L8+6
elbow&sleeveHem L9+5 D8-4
elbow&strain B11-3 K4-3 W3-4 L3-5 L8+11 D2-4 X2-5
elbow&tight N2-3 B1-4 K1-3 W3-3 L8+14 X2-5
elbow&tilt L9-4 X1-5
elbow&uneven D8-4
empty SH2-6 SH3-7 SH4-4 B1-4 B2-3 B3+13 B4-5 B5-8 B6-10 B8-3 B10-6 B11-3 B13-6 A4-4 W4-5 W9-4 W12-3 L1-4 L4-3 L6-6 L7+5 L8-6 D4-5 D5-4 D6-3 X2+3 X3-5
empty&fold SH5+5 SH6-3 B10-3 A4-3 A5-6 L4-4 D1-3 D5-3
empty&front B2-5 W3-3 W4-4 W5+5
empty&fullBust B1-5 B3+5
empty&hang B3+4
empty&loose B3+6 B9-4 B10-6 X3-4
empty&neckSide N5-4 N6+5
empty&peak SH1-7 SH2-3 SH3-4 SH5-4 SH6-3 SH7+3 B5-3 B6-4 B7+5 L1-5 L2-4 L6-5 L7+8 D1-4 D2-3 D6-3 X3-3
empty&shoulderSeam SH3-5 SH4-4 SH5-5 SH6+5 A5-4
empty&shoulderTip SH2-5 SH3-6 SH4-5 SH5-5 SH7+5 B3-5 B7-3 L2+3 L7-3
empty&sleeve SH5+5 SH6-4 SH7-4 B3-5 B8-3 B10-3 B11-4 A1-4 A4-5 L4-6 L7-5 D1+5 D4-4 D5-5 D6-4 X2-3
empty&sleeveCap SH5-4 SH7-7 B3-6 B7-3 A5-3 L1-9 L3-3 L6-8 L7+7 D1+4 D2-3 D5-4 D6-4 X3-3
empty&slopingShoulders SH1+3
empty&smallBust B3+8
empty&stickUp SH1+3
empty&tight B1-5 B3+4 A5-3 X2+5
empty&tip N6+3 SH7-3
erect N1-8 N2-8 N3-9 N4-8 N5-8 N6-8 N7-10 N8-8 SH1-8 SH2-9 SH3-8 SH4-8 SH5-8 SH7-8 SH8-8 B1-8 B2-8 B3-8 B4-8 B5-8 B6-8 B7-9 B8-8 B9-8 B10-9 B11-9 B12-8 B13-9 B14-8 B15-8 A1-8 A2-8 A3-10 A5-8 K1-11 K2-9 K3-12 K4-9 K5+23 K7-8 W1-8 W2-8 W3-8 W4-8 W5-8 W6-8 W7-9 W8-9 W9-8 W10-8 W11-8 W12-8 L1-9 L2-9 L3-8 L4-8 L5-8 D3-8 L6-8 L7-8 L8-9 L9-9 D1-8 D2-8 D4-8 D5-8 D6-8 D7-8 D8-8 X1-9 X2-8 X3-8 X4-8
erect&fold A4-4 K2-5 K5+5 K6+3
erect&long K5+3
erect&stickUp K2-4 K6+4
extra SH6-3 B6-3 B9+3 B14-3 A1-3 A2-3 A4+5 K1-4 K6+3 W3-3 W9-4 L2+4 L3-3 L6-3 D4+7
extra&flat L1-6 L2-5 L6+5
extra&fold B3-4 A4-4 A5+5 K6-5
extra&front B3+5 B10+5 A5-3
extra&frontArmhole B6-3 B8+5
extra&frontNeck N1+5
extra&fullBust B1-4 B3+8 B6-6 B13-4
extra&hang A2-4 D4+5
extra&looksPregnant B1-4 B3+4
extra&loose B8+9 B10-4 A2+5 A5-6 L2-3 L3-4 D4-8
extra&lowerBack K2+5 K6-5
extra&nape N3-3 N4+4
extra&narrowBack N1-5 N3-3 N4-4 N5-4 N7-3 N8-3 SH1-4 SH3-4 SH4-3 B3-6 B6-4 B8-5 B9-5 B10-5 B11-3 B13-6 B14-3 A3-3 A4+10 A5-3 K1-10 K3-4 K5-4 K6-7 W4-6 W7-3 W11-3 W12-3 L2-5 L4-3 D4-7 D5-4 D6-3 D7-3 X1-3 X2-4 X3-8 X4-4
extra&neck N1+4 N2-5 N5+4 B10+3 A4-3
extra&past B13-3 B14+4 A4-6 K5+5
extra&pinch B6-3 B8+4
extra&reach N1-3 N5-5 B10+5 A5+6 D4-3
extra&seat K2+4 W9-3
extra&shoulder SH3+5
extra&shoulderTip SH1+9 SH2-9 SH3-6 SH4-4 SH7-4
extra&show A2+4 D4-4
extra&sit K2+4 W9-3 D4-3
extra&slant A2+4
extra&sleeve B3-4 B8+7 A1-3 A4-4 L3-6 L4-3 D1-4 X3-5
extra&sleeveCap B3-3 A4-4 L1-10 L2+10 L7-8 D4+3 D5-3 D6-3
extra&smallBust B3+3 K6-4 W1-4 W2-5 W3-6 W4+4
extra&stickUp B10+4
extra&tight B1-4 B3+8 B6-6 B13-4
extra&tilt A2+3
extra&underBust B3-3 B13+12 D4-3
extra&underarm B8-4 A1-9 A5-3 L2-4 D4+15
extra&upperBack A4+9 K1-6 K3-6 K5-5 K6+7 W1-3 W4-6
extra&upperChest B3-5 B9+12 B11-8 A4-3
extra&upright N1-3 N5-3 B3-4 B10+10 A4-3
extra&waist B3-6 A4-11 K2-4 K3-4 K5-3 K6+7 W1-9 W3-12 W4+10 W5-5 D4-3 X3-3
extra&whole B3-3 B8-4 B13-3 X2-6 X3+7
extra&wide N1-3 N5+5 B6-4 B10+4
facing SH3-4 SH5-3 SH6+5 D6-3
facing&shoulderSeam SH3-4 SH5-3 SH6+5 D6-3
facing&show SH3-4 SH5-3 SH6+5 D6-3
fine>bust B1-5 B3-6 B13+6
fine>neckSide N2-4 SH1+4 SH2-3
fishEye B4-4 B7-8 W2-3 W12+18
fishEye&hip W12+5
fishEye&long W2-9 W12+7
fishEye&stickOut W12+10 D1-3
fishEye&waist W2-6 W12+8
fishEye&waistDart B6-4 W12+7 X3-4
fishEye&widerHips W12+5
flat N2-5 N3-6 N4-6 N5-6 N6-6 N7-6 N8-6 SH1-6 SH2-6 SH3-6 SH4-6 SH5-7 SH6-6 SH7-6 SH8-6 B1+12 B2-6 B3-8 B4-7 B5-8 B6-8 B7+5 B8-7 B9-6 B10-6 B11-7 B12-6 B13-6 B14-6 B15-6 A1-8 A2-6 A4-7 A5-6 K1+3 K2-6 K3-6 K4-7 K6-6 K7-6 W1-6 W2-6 W3-7 W4-6 W5-6 W6-6 W7-6 W8-6 W9-6 W10-6 W11-6 W12-6 L1+9 L3-8 L4-7 L5-6 D3-6 L7-9 L8-7 L9-6 D1-8 D2-7 D4-6 D5-7 D6-7 D7-7 D8-7 X1-6 X2-8 X3-6 X4-6
flat&loose K5+4
flat&misses SH5-5 SH7-3 B1-4 B5-5 B6-4 B7+5 B8-4 A1-5 A2-4 A3+5 L1-4 L7-4
flat&pull L1+5 L2-4 L6-4 L7-3
flat&slant L1+3
flat&sleeveCap B1-4 B7-4 L1+12 L2-5 L7-6 D2-4
flat&strain L1+3
fold SH8+5 A5+8 K2+4
fold&forward N8-4 SH1-4 A1-5 A2-4 A5+6 W6-4 L4+4 D4-8 D5-5
fold&front B8-4 B9-3 B10+3 A1-3 A5+4 W2-4 W5+3 L1-4 L2-4 L3-4 L4+5 L6-7 D4-7 D5+6
fold&frontArmhole SH1-5 SH8-4 B9+4 B10+5 B11-8 A4-4 A5+4 K2-4 K5-4 L6-3 D4-5
fold&frontNeck B9-4 B10+5
fold&frontWaist B14+4 A5-4 K2-6 W1-6 W2+3 W5-9 D5-4
fold&fullBust B1-5 B3+4
fold&gape SH1-5
fold&hang A5-5 K2-3 D5+5
fold&hem W9-5
fold&high N7-3 SH8-5 B5-4 B9-4 A5-3 K2-3 W1-6 W2-3 W5+5
fold&hip W9+5
fold&hollowChest B9+3
fold&inward SH2+5 SH4-4 K2-3
fold&long SH3-4 B10+7 A4+3 A5-4 K2+4 K5-7 W5-3 L2-3 L4-6 L9-3
fold&loose B9+5 K5+6 K6-3 X3-5
fold&low SH2-5 K2+5 K5-5 W2-4 D4+4
fold&lowerBack B10-4 A4-4 K2+5 K6+8
fold&misses SH5-3 B5+3 L4-4 D5+4
fold&nape N4+9 K7-7
fold&narrowChest B9-4 B10+7 A4-5
fold&neck N4+4 N5-3 SH1+6 K5-4 W9-3
fold&neckSide N1-4 N4-3 N6+4 SH2+6 SH8-5 B15-4
fold&oneShoulderLow N4-3 SH1-4 SH8-9 B8-4 B10+4 A4-4 A5-4 K2+6 K3-4 K5-5 L1+4 L3-3 L4-4
fold&oneSide N5-3 SH7-3 SH8+19 A2-3 A5-7 K2-5 L4+4 D5-4 X4-3
fold&open N6+5
fold&past A4-4 K5+4 W2+4
fold&peak SH7+7 SH8-3 L2-4 L3-6 L4-3 L6-3 D5-3
fold&pointy B4-7 B7+4
fold&reach SH8-3 B11+7 A4-4 A5+4 K1-7 K2-3 D4-3
fold&realCloth N4-6 SH1-5 SH2-4 SH8-7 B3-5 B7-3 B8-3 B9-6 B10-4 B13-3 B14-5 A4-4 A5-10 K2-8 K5-5 W2-5 W8-3 L2-4 L4-5 L6-3 D4-6 D5-5 X3-3 X4+17
fold&rise K2-6 K3+3 D3+4
fold&sag SH8-8 B2-5 B3-5 B5-4 B9+3 B15-4 A2+3 W5+4 L2+3 L6-3
fold&seam K5-3
fold&seat A2+3 L4-4
fold&short N2-3 N4+9 K7-3
fold&shoulder SH4-5 SH5-3 K5-3 L3-3
fold&shoulderSeam N4+4 N6-3 SH5-4 SH7-3
fold&shoulderTip N2-4 N6-4 SH1-4 SH2+7 SH4-5 B9-6
fold&show D6+4
fold&side SH8+6
fold&sideSeam SH8-3 B1+4 B3-3 W6-6 W7-5 W8+7 L5-3 D3-4 D8-3
fold&slant SH1+3 SH8+5 B8-3 L4+4 D4-6 D5-4
fold&sleeve SH2-4 SH3-3 SH8-7 B14-6 A1-3 K2-3 L2-5 L3-7 L4+10 L7-3 L9-4 D1-3 D5+7
fold&sleeveCap SH1-3 A5-4 K2-3 L1-5 L2+7 L4-6 L6+5 L7-6
fold&sleeveHem D6-3 D8+7
fold&sleeveSeam A5-3 L4-4 L6-4 L7+8
fold&slide L4+4 D5-4
fold&slopingShoulders SH1+7 SH3-3 SH8-4 A5-5 D4-5 D5-4 X2-4 X3-5
fold&small A5-4 L7+3
fold&squareShoulders SH2+3
fold&stickOut K2+4 K6-3
fold&stickUp K2-4 K6+3
fold&swing SH1+4 B10+4
fold&tight B1-4 B11+4 K5-4 D2+4
fold&tilt SH8+4 D4-6
fold&toile X4+4
fold&underBust B13+4 B14+10 A2+4 A5-4 K2-3 W1+5 D4-4
fold&underarm SH1+4 A1-4 A2-4 A5+5 L4-4 D4+8 D5-6
fold&uneven SH8-3 L4-7 L9-5 D5+8 D8-3
fold&up A5+3 W1+4
fold&upperArm N4-4 SH3-5 SH7+6 SH8-5 B9-5 B14-3 A5-6 K2-5 K5-5 W2-4 L1-3 L3+5 L4-7 L6-6 L7-4 D1-4 D2-5 D4-4 D5-5 D8-3 X4-4
fold&upperBack N4+5 A4-13 K1-4 K2+4 K3-4 K5+8
fold&upperChest SH2+5 B9+10 B11-4
fold&upright B10+9 B13+4 A3-3 A4+10 A5-8 K2-12 K6+10 W2-5 W4+6 X3+6
fold&waist B10-3 K2+4 K5-8 K6-3 W2+8 W3-10 D4+4
fold&wavy W8+6
fold&whole SH1+4 SH8-5 B10-7 B13-4 A2-4 A4-5 A5-5 K5-3 K6-3 W1-3 L2-3 L4-7 D4-5 D5+6 X1-4 X2-10 X3+10
fold&widerHips W9+5
fold&wing SH8+3
forward N5-3 N8+18 SH3-5 SH4-4 SH6+10 B1-3 B10-3 W2-4 W5+5 W6+13 W7-7 L3-6 D2-3 D4-4 D5+5 X1-4
forward&frontNeck N8+3
forward&fullBust W6-4 W8+5
forward&hang N1-3 N2-4 SH6-3 D1-3 D5+8
forward&hem W6+8 W7-5 W11-5
forward&loose N1-5 N2-4 N8+7 W4-6 D5-4 X3-5
forward&low N8-5 W2-11 W5+9 W6-3 W8+3
forward&nape N3-3
forward&neck N1-4 N2-4 N8+7
forward&past N8-4 SH3-5 SH5-5 SH6+6
forward&pointy N8-5 SH6-4 B2-4 B4-4 B8-3 A5-4 W6-3 W10+6
forward&pull N1-3 N2-5 N3-3 N7+11 N8+3 SH2-5 SH3-3 SH4-7 SH5+9 SH6-10 SH8-3 B2-4 B4-3 B5-3 B6-3 B8-4 B10-4 B11-7 B12-4 B13-3 B14-4 B15-4 A1-4 A3-3 A5-8 K1-6 K2-3 K3-4 K4-6 K5-3 K7-4 W3-6 W5-6 W6+5 W7-5 W8-5 W9-5 W10-5 W11-3 W12-3 L1-8 L2-4 L3-7 L4-9 L5-4 D3-4 L6-5 L7-5 L8-7 L9-4 D1-6 D2-9 D5-7 D6-5 D7-6 D8-4 X2-7 X4-4
forward&sag W2-6 W3-4 W4-7 W5+14
forward&seam N6-4 N8-9 SH2-5 SH4-7 SH7-5 SH8-3 B5-3 A1-4 A5-4 W1-4 W5-4 W6+7 W7-3 W8-4 L2-3 L4-3 L7-4 L9-3 D2-3 D5-3 X1-7
forward&seat W6+6 W7-4 W11-5
forward&shoulderSeam N6-6 N7-4 SH2-4 SH3-10 SH4-4 SH5-15 SH6+14 SH7-5 W6-6 L4-3
forward&side N8-4 SH6-4 B2-4 B4-4 B8-3 A5-4 W10+6
forward&sideSeam N8-9 W6+19 W7-8 W8+3
forward&sit SH2-4 SH4-5 SH5+4 SH6-5 W6-3
forward&slant W6+7 W7-4
forward&sleeve N7-4 N8-14 SH3-5 SH4-6 SH5+9 A5-4 W5-3 W6-8 L1-7 L2-4 L3-8 L4+7 L5-4 L6-6 L7-4 L8-6 L9-3 D1-7 D2-7 D6-6 D7-5 D8-3
forward&sleeveCap D5+4
forward&sleeveSeam N8-4 SH3-5 W6-4 L4+7 L6-3
forward&slide N5-4 N7-7 N8+15 SH5-4 W7-4 D5+5
forward&strain N7+5 N8-5 B1+4 W6-4 W8-5
forward&swing N8+8 SH5-5 SH6-5 W6+9 W7-6 W8-6 L4+5 D5+4
forward&tight W8+5
forward&tilt N8+5 SH5-6 SH8-3 W5-4 W6+12 W7-6 W8-7 L9-4 X1-6
forward&tip SH5-5 SH6+4
forward&tummy B1-3 W10-3
forward&twist W6+6 W8-4 X1-6
forward&underarm N8-5 SH1-4 SH6-4 SH8-3 A1-5 A2-4 A5+7 L4+4 D4-8 D5-5
forward&uneven W6+3
forward&waist N8-5 W1-3 W2-10 W3-5 W4-7 W5+15
forward&whole N7-4 N8+7 SH6-3 W6-5 D5-6 X1-3 X2-4 X3-4
forward&wornOn N5-4 N8+7 SH5-6 SH6-5 B1-4 B8-3 A5-4 K1-3 K4-3 W3-3 W5-3 W6-7 D5-5 X2-4
forwardShoulders N1-6 N2-5 N3-6 N4-7 N5-9 N6-7 N7-8 SH1-9 SH2-10 SH3-11 SH4-10 SH5+15 SH6-10 SH7-8 SH8-10 B1-5 B2-6 B3-6 B4-6 B5-6 B6-6 B7-7 B8-6 B9-6 B10-6 B11-6 B12-6 B13-6 B14-7 B15-7 A1-6 A2-6 A3-7 A4-6 A5-6 K1-9 K2-6 K3+8 K4-8 K5-6 K6-6 K7-7 W1-6 W2-6 W3-6 W4-6 W5-6 W6-7 W7-7 W8-7 W9-6 W10-7 W11-6 W12-6 L1-6 L2-7 L3-7 L4-8 L5-7 D3-7 L6-6 L7-6 L8-6 L9-6 D1-7 D2-7 D4-6 D5-6 D6-6 D7-6 D8-6 X1-7 X2-6 X3-6 X4-6
forwardShoulders&misses SH3-4 SH5+6 SH6-3 K3-5
forwardShoulders&roundBack N4-3 N8-4 SH1-3 SH2-4 SH3-3 SH4-3 SH6-3 SH7-4 SH8-3 K1-3 K3+9 K7-5 L3-4
forwardShoulders&seam SH5+5 K3-5
forwardShoulders&shoulder N5-5 SH3-6 SH4-5 SH5+8 K3-4 D1-3
forwardShoulders&shoulderSeam N7-3 SH3-5 SH5+5 SH6-4
forwardShoulders&tilt N8+6 B7-3
from N2-3 SH1+3 SH4+3 B3-6 B8+4 B15+5 A5-6 K4+4 W4-5 D2+6
from>apex B1+7 B3-6 B4-6 B5-4 B6-4 B13+4 B15-5 K4-5 L1-4 X3-4
from>arm B8-4 B10-4 A1-3 A4-3 K6-3 W2-3 W4-6 L3-4 L4-3 D4+6 D5-3
from>armhole B1-6 B3-8 B8+9 B15-5 A1-5 A2-4 L7-6
from>blade A1-4 K1-12 K4+14 W3-3
from>bust N2-4 B1-7 B2+6 B3-8 B13+6 B15+4 K4-4
from>dart B4+5 B5-4 B6-4 B7-6 W12-3
from>front N5-3 SH4-4 SH6+9 B2-6 B8-5 B11-3 B14-4 B15-3 K4-3 D6-5 X1-3
from>frontArmhole N4-4 SH1-4 SH2-4 SH4-4 SH8-7 B1-3 B2-3 B4-3 B8+5 B9-5 B10-8 B11+4 B13-3 B14-4 B15-5 A1-4 A5-9 K2-4 K4-4 W5-3 W7-3 L6-4 L7-4 D2-4 D4-5 X4-4
from>hem D3+4 D2-4 D8-4
from>neck N1-4 N2-10 N5+4 SH1+8 B1-6 B2-4 B15+5 A2-3 D4-3
from>neckSide N2-6 SH1+5 SH8-3 B1-6 B15+10
from>shoulder SH2-4 SH3-6 SH4-12 B1-7 B2-6 B15+5 K4-3 W2-4 D2+4
from>shoulderSeam SH2-5 SH4-4 SH6-3 B1-7 B15+10
from>shoulderTip SH1-8 SH2+4 SH3-13 SH4+11 SH5-6 SH7-7 B9-6 B11-4 B15-3 D2+4
from>side N4+3 B2+5 B8+3 B15-3 W3-4 W10-5 W12-3 D6-4
from>sideSeam N8-5 B1+8 B3-4 B5-3 B8-3 B15-11 W8-5
from>sleeve B8-4 B10-4 A1-3 A4-3 K6-3 W2-3 W4-6 L3-4 L4-3 D4+6 D5-3
from>sleeveCap SH1-4 SH4-4 B15-3 K4-5 W3-4 L2-8 L3-3 L5+3 D3-3 L6-5 L7-8 D2+12 D4-3 D7-6 D8-4
from>underBust B2+4 W1-4
from>underarm N2-3 N5-3 SH1+6 B15-3 A1+3 A5-4 K4+4 L1-4 D4-6
from>upperChest SH2+4 B11-3
from>waist SH4-6 B2+3 B14+4 B15-4 W2-5 W3-6 W5-3
front B2+11 B11+3 B13-4 B14+12 A1-3 K6-3 W1-3 W2-4 W5+3 W10+7 W11-5
front&frontArmhole A1-4 L6+5
front&frontHem W9-3 W11-4
front&frontNeck N1+6 SH7-3 B2-4 B14-4
front&frontWaist W1-4 W2-5 W4-5 W5+7 W10+4
front&fullBust B1-9 B2+4 B12+4 B15+3
front&gape B1-3 B2-5 B5+4 B8+3 A5-3 W4-4
front&grip N2-5 N7-3 SH2-3 B1-4 B2-5 B10-5 B11+6 B14-6 A1-5 A5-4 W3-4 W5-3 W10-4 L8-5 D7-4
front&hang B2-3 B14+3 A5-6 D5+8 X3-3
front&hem B2+5 W9-3 W11-6 L9-4
front&high N1-6 N2+4 B2+7 B5-4 B14-7 K3-4 W1-5 W5+4 W11-5 L9+3 D8-3
front&hip W6+3 W9-6
front&inward SH2+7 SH4-4
front&long N2-3 SH3-4 B4-5 B9+8 B11-3 B14+12 A5-4 K5-4 W2-8 W5-5 L2-4 L4-5 L6+4 L7-5
front&loose N1+5 N2-8 N3-4 B10+3 B13-9 B14+7 A5-3 K2-6 K6-5 W4-3 W6-3 W10+4 X3-7
front&low N2-3 B2-3 W2-4 W5+4 X1-3
front&misses N1-4 N2-4 N5+6 N7-3 SH3-6 SH4-4 SH5-4 SH6-5 SH7-6 SH8-4 B1-3 B2-4 B5-5 B6-4 B8-3 B10-5 B11-3 B15-3 A1+3 K3-3 W6+6 W7-4 W8-6 W9-3 W10-4 L4-4 D1-3 D5-4 X1-3 X4-4
front&nape N3-6 N8+6 B2-5 K7-3
front&narrow N2-4 SH3-3 SH4+5 SH6-4 B2-5 B6-5 B10-5 B11+7 B14-6 A1-3 A5-5 K1-7 W10-4 L3-4 D7-4 X2-6
front&neck N1+6 N5-4 N7+4 B2-4 B14-4
front&oneSide N5-4 B2-4 W5-3 W9-5 X1+5
front&open B1-4 B2-4 B8+3 B12+6
front&outward B2-5 W10+4 X1+4
front&peak N1-4 N2-4 B2-3 A5+4 W5+4 W8-3 X1-3
front&pull N1-4 N2+4 B2-4
front&reach N8+4 B10+3 K7-3 W10+6 L8-3
front&rise B2+17 B14-4 K3-3 W1-4 W5-4 D3-5 L9+3
front&sCurve N1-4 N2-4 B2-3 B14-4 A5+4 K3-3 W5-3 L4-3
front&sag N8+4 B2-6 B14+8 W5+6
front&seam SH4-3 SH5-3 SH6+7 B2-5 B8-3 B14-4 D6-4
front&seat W9-3
front&short N2-4 SH4-5 B1-5 B2+11 B10-3 B11-3 A5-3 K3-6 W1-9 L1-5 L6-4 L7+5 L9+3 X1-3
front&shortWaisted B1-6 B2-4 B15+7
front&shoulder N5+6 SH3-8 SH4-6 SH5-4 SH7-3 B2-6 B5-4 A5-4 W2-4 W5-3
front&shoulderSeam N2-4 SH3-4 SH4-4 SH6+7
front&shoulderTip SH2+6 SH4-6 SH5-3 SH6+4
front&show SH6+9 B8-4 B14-3 W10-5 D6-4
front&side W10-3
front&sideSeam B1-3 B2-5 B14-4 A5-5 W6+12 W7-9 W9-4 W10-4
front&slant W5-3 X1+3
front&sleeve SH3-4 SH5-4 SH6-3 B2-6 B8-4 B9-4 B10+4 B14-9 A4-4 W5-4 W10-4 L1-6 L2-6 L4+4 L9-5 D1-6 D2-4 D4-8 D5+6 D6-5 D8-3
front&sleeveCap B8-4 A5-4 L1-4 L2-4 L6+5
front&sleeveHem B2-12 B8+4 L1-5 L9+14 D6-6 D7-8 D8-9
front&sleeveless B8+4
front&slide N5-5 B2-5 B14-4 W5-4 L4-3 X1+7
front&small N1-3 N2+5 N5-3 A1-4 A5-5 L3-5 L6-6 L7+5 D7+4
front&smallBust B2+4
front&stickOut B2-7 B14-4 W5-6 W10+9 W12-4 D1-3
front&stickUp W10-3
front&strain N1-3 B2-3 B10-3 B11+5 B15-7
front&swing B2-5 W6+7 W7-8 W8-3 W9-4 X1+5
front&tight B11+6 B14-5
front&tilt W5+7 W10-3
front&tummy W10+6
front&underBust B13-11 B14+15 A5-4
front&underarm B10-5 A2-4 A5+7 L1-5 L4-6 L6-4 L7-3 D4-6 D5-7
front&uneven B2+4 W11-5 L9-6 D5+4 D8-4 X1+5
front&up W10+5
front&upperArm L3+6 L4-5 L6-6
front&upperChest B9+5 B11+7 B14-8 B15-6
front&upright N1-3 N8-3 SH6-4 B2-4 B8-4 B10+12 B14-7 A4-8 A5-5 K6-4 W4-5 L8-4 X3-6
front&waist B14+6 W1-6 W2-7 W3-3 W4-5 W5+7 W10+4
front&whole B14-4 A5-4 L4-6 D5+8 X3-5
front&wide N5-4 B2-4 B9-5 B10+10 B11-7 B14-4 A5-3 X3-6
front&widerHips N1-3 N8-4 SH6-5 B2-5 B8-3 B10-5 B11-3 B14-6 A5-5 W4-3 W5-4 W6-4 W7-4 W9+6 W10-3 W12-3 L6-3
front&wornOn N8-5 W10-3 X1+4
frontArmhole SH1-3 B8+13 B10+5 B11+6 A1-9 A2-5 A3-5 A4-4 A5+13 L6+4 L7-4 L8-5 D4-3 D6-4
frontArmhole&gape N1-3 B8+11 B10-3 A3-6 A5-8
frontArmhole&hang B10+4
frontArmhole&long A5-4 L2-4 L6+7 L7-7
frontArmhole&loose SH1-3 B8+11 B9+5 B11-7 B14-4 A2-7 A3-6 A4-3 A5-9 K5-4 W4-4 X3-6
frontArmhole&narrow B11+5
frontArmhole&neck SH7-3 B8-4 A5+4
frontArmhole&open B8+4
frontArmhole&peak SH7-3 B8-4 A5+4
frontArmhole&pinch B6-3
frontArmhole&pull SH8-4 B8-5 B11+6 A1-3 A5-6
frontArmhole&short L1-4 L6-7 L7+13
frontArmhole&show D6-4
frontArmhole&sleeve A2-4 A5-3 L3-4 L6+6 L7-4 D6-6 X3-4
frontArmhole&sleeveCap B8-4 A5-4 L1-4 L2-4 L6+5
frontArmhole&sleeveless B8+5 A5-3
frontArmhole&small L6-6 L7+4
frontArmhole&stickOut B8+7
frontArmhole&strain B1-5 B8-5 B10-4 B11+8 A1-4 A5-9 W3-3
frontArmhole&swing SH1-3 SH8-3 B10+5 A5-4
frontArmhole&upright B8-10 B10+13 A4-5 A5-8
frontHem N2-6 N7+5 N8-7 SH6-4 SH7-3 B2+7 B4-4 B5-4 B8-4 B10-4 B11-3 B14-3 A5-6 K3-12 W1-4 W5-5 W7-6 W8-3 W9-7 W10+12 W11-8 W12-4 L1-3 D3-7 L9-4 D1-3 D8-4
frontHem&hem W9-3 W11-4
frontHem&rise N7-5 N8-3 B2+5 K3-9 W1-5 W6-4 W9-7 W10+8 W11-3 D3-8 L9-3
frontHem&seat W9-4
frontHem&side N8-5 SH6-4 B4-4 B8-4 A5-4 W5-5 W6-3 W10+5 W11-4
frontHem&sideSeam W6+7 W7-6 W10-4
frontHem&stickOut B2-4 W10+7 D1-3
frontHem&swing W6+6 W7-5
frontHem&throat N2-4 N7+4
frontHem&tummy W10+4
frontHem&up N2-4 N7+9 N8-4 B2-5 K3-7 W10-4 W11-5
frontNeck N1+15 N2+6 N3-5 N5-6 N6-6 SH7-4 B4-4 B5-6 B7-5 B8-3 B9-4 B13-4 B14-6 W1-3 X3-5
frontNeck&gape N1+10 N2-4 N6-4
frontNeck&high N1-7 N2+8 B2-4
frontNeck&long N1+6 N2-6 N8-4 B9-3 B14-5 W2-3
frontNeck&loose N1+6 N2-10 N5-4 N8+6 B3-3 X3-6
frontNeck&low N2-5 N8+6 B14-3 A5-3 W5-3 X3-3
frontNeck&neck N1+8 N5-4 B2-5 B14-4
frontNeck&open N1+8
frontNeck&pinch N2+4
frontNeck&pull N1-7 N2+8 N7-3
frontNeck&rise N1-6 B2+6 B5-4 B13-5 B14-4 K3-4 W1-5 W10-3 D3-4
frontNeck&sag N8+3
frontNeck&show N1+7 N2-10 N5-5 D6-6
frontNeck&stickUp N1+4
frontNeck&strain N1-7 N2+7
frontNeck&tight N1-12 N2+7 N8-4 B2-5 X2-4
frontNeck&upright N1+6 N2-7 N8-3 B9-4 B10+4
frontNeck&wide N1+4 N5-4
frontWaist B2+12 K2-5 K3-6 K6-7 W2-4 W3-4 W4-7 W5+15
frontWaist&gape N1-4 B2+4 B8-4 A5-3 K2-5 K3-3 K6-5 W4-7 W5+4 W10-4
frontWaist&high B2+6 W1-8
frontWaist&long B14+4 W2-4 W5-4
frontWaist&loose W4-3 W5+5
frontWaist&low W2-4 W5+9
frontWaist&peak W5+5
frontWaist&rise B2+14 K3-4 W1-11 W5-6 D3-5
frontWaist&sag B2-5 W2-4 W5+15
frontWaist&short B13-4 K3-5 W1+4
frontWaist&sit W2-5 W5+4
frontWaist&stickOut B2-6 B14-5 W5-7 W10+9 W12-6
frontWaist&tilt W5+5
frontWaist&waist W1-4 W2-4 W4-5 W5+9 W10+4
fullBust B3+8
fullBust&gape B1-3
fullBust&grip B1+4 B3-3
fullBust&hang B3-3 B15+3
fullBust&high B1-6 B3-5 B5+4
fullBust&inward B5-4 B6+4
fullBust&long B2+4
fullBust&loose B1-9 B6-4 B13+7 B15-3
fullBust&low B1-5 B5+4
fullBust&misses B3-3
fullBust&neck N2-5 B1-4 B2-4 B3-3 B15+10
fullBust&neckSide B15+7
fullBust&oneShoulderLow SH8-4 B1-7 B3-4 B15+7
fullBust&open B1-5 B2-4 B12+7 B15-3
fullBust&outward B2+6 B3-6 B5-3 B15-5 W3-3
fullBust&past B4+6 B5-4 B6-5
fullBust&pull B2+6 B3-3 B15+4
fullBust&rise B1-4 B2+4
fullBust&sag B1-3
fullBust&shortWaisted B1-6 B2-4 B15+7
fullBust&shoulder B1-4 B2-4 B15+4
fullBust&shoulderSeam B1-5 B15+7
fullBust&side B1-4 B2+7 B15-4 W3-4
fullBust&sideSeam W6-5 W8+6
fullBust&slant B1-5 B2+8 B15-8 K4-3
fullBust&small B3-4
fullBust&stickOut B1-3 B4+7 B5-5 B6-3
fullBust&strain W8-4
fullBust&swing B1-5 B4-3
fullBust&tummy W8+4
fullBust&upperChest B4-5 B5+4
fullBust&waist B1-5 B2+5 B15-3 W3-5 W9-4
fullBust&wide B1-9 B3-4 B6+9 B10-3 B13-6 B15-3 X2-3
gape N1+8 N5-3 B8+9 A2-3 A3+7 W3-5 W4+4 W10-3 D6-5 X3+4
gape&hem A3-4 K3+3 W11-7 L2-4 L6-4 D8+4
gape&long W12+4 D8+4
gape&loose N1-4 B3-3 B8-5 B13+4 A3-4 W4-4 X3+6
gape&low N1-3 N8-3 B1-4 B3-6 B4-3 B5+4 B8-4 B13+3 B14-4 W2-3 W5-3 X3-4
gape&nape N1-7 N3+12 N8-3 K7-4
gape&neck N1+14
gape&neckSide N6+7 SH1-4
gape&open N1+4 N6-4 B8+6 B12+3 D7-3
gape&placket N1-4 B12+7 A3-5
gape&sag N1-3 N3+6
gape&seam N1-6 N6+5
gape&shoulder N1-3 N5-4 SH3+6 SH4-5 B8-4 A3-4 X3-7
gape&shoulderSeam N1-6 N6+9 SH6-3
gape&shoulderTip N1-4 N6-7 SH1+12 SH3-6 SH4-5 SH5-4 SH7-6 B8-4 A3-4 D1-5
gape&sideSeam N1-3 B8-4 A3-3 W6-6 W7-6 W8+9
gape&skin B8+5 A3-5
gape&sleeve N1-3 SH3-5 B8-7 A1+5 A3-3 K1-5 L2-4 L3-7 L4-5 L5-4 L6-3 D1+6 D7-4
gape&sleeveCap B8-4 L1-3 L2-6 D3-4 L6-5 D1+5 D2-3 D8+4
gape&sleeveHem N1-6 N3-4 N6-3 B8+7 B12-5 B13-3 A3-6 L2-5 L9-8 D1+3 D2-3 D6-4 D7-6
gape&sleeveless N1-3 SH5-4 B12-4 A3+4 A4-3
gape&smallBust SH1-3 B3+6 B4-3 B5-4 B6-3 B8-4 B12-4 B13-3 A3-3 L7-4
gape&stickOut D1+3
gape&strain B12+3
gape&tight B1-3
gape&tilt B8-3 A1+6 K1-4 L3-5 L5-4 D1-5
gape&twist D8+4
gape&underBust N1-3 B8-5 B12-4 B13+8 B14-4 A3-3
gape&underarm B8-7 A1-4 A2+6 D4-3
gape&upperBack N4-3 N6+3
gape&vNeck N1+7 N2-5 N3-3 N6-4
gape&waist N1-5 N6-4 B2-5 B5-4 B8-5 A3-5 K3-4 W1-9 W2-8 W3-10 W4+11 W12+4 D1-4
gape&wavy L2-4 L6-4 D8+4 X3-4
gape&whole N1-6 N6-4 N8-3 SH1-4 B8-6 B12-4 B13-3 A3-6 W1-5 W4-4 W8-3 W11-3 W12-3 D3-3 D1-6 X1-5 X2-9 X3+9
gape&wide B8-5 D6+4
gape&wing SH2-3 A3+5 K4-3 D1-4
grip SH4-3 B2-3 B8-4 B12-5 B14-3 A1+4 K1+4 K4-5 L1-3 L3+4 L4-4 L7-3 L8+5 L9-3 D1-3 D2-5 D7+5 D8-4 X2-3
grip&neck N1+3 N5-5
grip&placket B12-5 D6-3
grip&pull D3+4
grip&reach K1+3
grip&rise D3+5
grip&shoulderTip SH1-6 SH2+8 SH4-6
grip&show N1+4 B8-3 D6+4
grip&sleeve A1-5 K1-3 L1-4 L4-5 D3-3 L6-3 L7-3 L8+5 D1-4 D2-4 D7-5
grip&sleeveHem L3-6 L8-3 L9-6 D6-5 D7+12 D8-7
grip&tight B1+4 B3-3
grip&tummy W10+7
grip&underarm A1+10 A2-4 D4-7
grip&upperArm A1-4 L3+9 D7-5
grip&waist W1-4 W2-3 W3+9 W4-6
grip&whole N1+4
hang N1-4 N2-6 N7-7 N8-4 SH6-4 B3-3 B8-4 B10-3 B13-3 A3-5 A5-4 K2-3 D5+13 D6-3 D7-5 X3-5
hang&hem W6+3
hang&long L4-4
hang&loose N1-3 N2-4 N8+4 K2-3
hang&misses D2-4 D5+5
hang&neck N1-5 N2-7 N5-4 N8+4 SH1+4 L4-4
hang&new X4+4
hang&oneSide SH8+5
hang&overarm D2-4 D5+5
hang&pull A2-5 D4+5
hang&sag A2-5 D4+5
hang&seat L4-3
hang&sideSeam W6+3
hang&slant SH1+4 B15-3 L4-4
hang&sleeve B10-3 L2-3 L3-4 L4+6 D1-4 D6-3
hang&sleeveCap D5+4
hang&sleeveHem N2-3 L4-4 D5-4 D6-5 D7-6 D8+3 X1-3
hang&slide N5-4 N7-5 N8-8 SH2+3 D5+7
hang&swing L4-6 D5+4
hang&tight B3-3 B15+3
hang&underBust B13-3 B14+6
hang&underarm A1-4 A2-7 D4+8
hang&uneven SH8-5 D2-3 D5+7 D8-5 X1+4
hang&upperBack A4-4 K5+4
hang&upright A3-3 A4+6 D4-3
hang&waist K6-3 W1-4 W3-6 W4+5 W5-3
hang&whole B14-3 A4-6 D5+9 X1-3 X2-4 X3-6
hang&wide B10+4
hang&wing N2-4 SH1-6 SH8-3 B8-4 A1-3 A2+4 A3-3 W4-4 D1+5 D4-5 X1-4 X3-4
hem W6+3 W9+5 W11+15 X1-5
hem&high B2+4 B5-4 K3-7 W9-3 L9-4
hem&hung W11+5
hem&long K3-4 K5-3 W2-4 W6-3 W7-3 W11+9
hem&loose W10-3
hem&low W9-7 D3-3 L9+5 D7-4 D8-5
hem&misses B2-5 B5-6 B7-4 K3-6 W1-3 W9-5 W11+6 D8-3
hem&neck W9-3
hem&oneSide K3-4
hem&peak SH8+4
hem&pull L1-4 D2+4 D8-4
hem&rise B2-11 K3-7 W1-5 W9+7 W11-3 D3+5 L9-4
hem&roundBack K3+3 W9-3 D3-3
hem&sag K3-5 W11+4 L9+3
hem&seat W6+3
hem&short B2-3 W11+4
hem&side SH8-5 W11+7 D3+4 L9-4
hem&sideSeam W6+9 W7+6
hem&slant W9-3 W11+7 L9-4
hem&sleeve W11-4 D3+5 D8-3
hem&sleeveCap W11-5 L1-4 L2-6 L6-5 L7-5 D2+7
hem&sleeveHem W11-6 D3+5 L9+6 D7-5 D8-5
hem&small W9+7
hem&stickOut W10+4
hem&strain W11-4 L7-3 D2+4 D8-4
hem&swing W6+3
hem&tight W11-4
hem&tilt W11+5 L9-3
hem&tip B7-4 W12+4
hem&tummy W6+4 W10+4
hem&twist W11+4 L4-3 X1-4
hem&underBust A2+4
hem&underarm A1-3 A2+4
hem&uneven W9-5 W11+9 L9+4 X1-6
hem&upperBack N7-3 A4-7 K1-7 K3+10 K5-7 W7-4 W9-3 W11-9 L9-3 D8-4
hem&waistDart W12+4
hem&wavy K3-3 W9-3 W11+5 L2-4 L6-5 D1-3 D8+5
high SH8+4 B3-5 B5+9 B6-5 B13-3 A1+6 A2-3 W1+7 W2-3 W3-5 W4-5 W10-5 L1-3 D3-3 L6-3 L7-4 D4-3
high&hung W11+7 D8-5
high&inward L9+7 D8-4
high&loose B5-3 B13+3
high&misses N4-3 SH8-6 B2-8 B5+4 A1-4 A5-3 K3-8 W1-6 W6-3 W9-4 W11+6 L1+9 L2-12 L5-3 D3-4 L6-6 L7-4 L9-6 D4-3 D5-5 D8-4 X2-4 X4-5
high&neck N1-7 N2+6 A5-3
high&oneSide SH8+9 B2-4 B5-4 K3-6 W1-4 L9+4
high&peak SH8+4 W11-5
high&sag SH8+3 B2-5 B3-3 K3-4 W1-5 W5+4 L9-8 D8+6
high&seat K3+4
high&shoulder SH3+5
high&shoulderSeam SH3+5
high&side SH8-5 L9+5
high&sit W1+3 W2-4
high&sleeve L9+3
high&sleeveCap SH8-3 B2-4 B5-8 A1-3 K3-5 W1-5 L1+3 L2+6 D3-4 L6-9 L7-7 L9-6 D1-3 D2-3 D5-4
high&sleeveHem SH8-4 W1-4 L1-3 L9+9 D6-4 D7-7 D8+6
high&smallBust B2+4
high&tight B1-6 B3-5 B5+4
high&twist L9-5
high&underarm B2-3 B5-5 A1+7 A2-6 A5-3 K3-3 W1-4 L9-4 D4-7
high&uneven B2+5 W11-4 L9-4
high&waist B5-4 K3-4 W1+11 W3-9 W4-7
hip B4-3 W2+6 W3-3 W4-6 W9+10
hip&misses B5-3 B7-4 W1-4 W2+4 W4-5 W6+3 W9-6
hip&side K4+3
hip&sit W9+3
hip&skirt W9+3
hip&slide W2+3
hip&small W9+4 X2-4
hip&smallBust W9+3
hip&stickOut W9-3 W12+5
hip&strain W9+6
hip&tight W9+10
hip&tip B7-4 W12+5
hip&waist W1-6 W2+8 W3-6 W4-10 W5-3 W12-3
hip&waistDart W12+4
hip&widerHips W9+8
hollowBack N1-5 N2-5 N3-6 N4-6 N5-5 N6-5 N7-6 N8-5 SH1-5 SH2-5 SH3-5 SH4-5 SH5-5 SH6-5 SH7-6 SH8-5 B1-5 B2-5 B3-5 B4-5 B5-5 B6-5 B7-5 B8-5 B9-5 B10-5 B11-5 B12-5 B13-5 B14-6 B15-5 A1-5 A2-5 A3-5 A4-5 A5-5 K1-6 K2+19 K3-9 K4-5 K5-8 K6-10 K7-5 W1-5 W2-5 W3-5 W4-4 W5-5 W6-5 W7-6 W8-5 W9-5 W10-5 W11-6 W12-5 L1-5 L2-5 L3-5 L4-5 L5-5 D3-5 L6-5 L7-5 L8-5 L9-6 D1-5 D2-5 D4-5 D5-6 D6-5 D7-5 D8-5 X1-5 X2-5 X3-5 X4-5
hollowBack&lowerBack K2+5
hollowChest N1-7 N2-8 N3-7 N4-7 N5-7 N6-7 N7-7 N8-7 SH1-6 SH2-8 SH3-6 SH4-6 SH5-7 SH6-8 SH7-7 SH8-7 B1-7 B2-7 B3+6 B4-6 B5-8 B6-6 B7-6 B8-6 B9+11 B10-10 B11-12 B12-7 B13-7 B14-7 B15-7 A1-6 A2-7 A3-7 A4-6 A5-8 K1-6 K2-8 K3-6 K4-6 K5-7 K6-6 K7-6 W1-7 W2-7 W3-6 W4-6 W5-7 W6-7 W7-7 W8-7 W9-7 W10-7 W11-7 W12-6 L1-6 L2-7 L3-6 L4-6 L5-7 D3-7 L6-7 L7-7 L8-7 L9-6 D1-7 D2-6 D4-7 D5-6 D6-7 D7-6 D8-7 X1-6 X2-6 X3-6 X4-7
hump N1-5 N2-7 N3-9 N4-7 N5-6 N6-3 N7-4 N8-7 SH1-3 SH2-3 SH3-3 SH4-3 SH5-3 SH6-3 SH7-3 B1-4 B2-3 B3-3 B4-3 B5-3 B7-3 B11-3 B12-3 B13-3 B14-3 B15-4 A1-3 A2-3 A3-3 A4-3 A5-3 K1-4 K2-3 K3-3 K4-3 K5-3 K6-3 K7+22 W1-3 W2-3 W3-3 W5-3 W6-3 W7-3 W8-3 W9-3 W11-3 W12-4 L1-3 L2-3 L3-3 L4-3 L5-3 D3-3 L6-3 L7-3 L8-3 L9-3 D1-3 D2-4 D5-3 D6-3 D7-3 D8-3 X1-3 X2-4 X4-3
hump&nape N3-6 N8-3 K7+6
hump&neck N1-4 N5-4 K7+7
hump&neckSide K7+4
hump&reach N2-4 K7+4
hump&strain K7+5
hump&tight K7+5
hung W11+5 L9-10 D8+10
hung&sag W11+7 D8-5
hung&seat W11+5
hung&sleeveHem L9-10 D8+9
hung&uneven L9-10 D5-3 D8+10
inward N6+3 SH3-7 SH4+9 SH5-5 SH6-4 SH7-4 B4-6 B5-7 B6+9 B7-6 B11-4 A1-9 K2-4 W3+5 L1-6 L2-3 L3-4 D3-5 L7-4 L8-3 L9+10 D2-5 D7-4
inward&long L9+4
inward&misses B5-5 B6+5
inward&outward L9+4
inward&past K2-3
inward&pull SH2+5 D2-4
inward&rise N6+6 SH2-3 SH3-4 SH5-3 SH6-5 K3-3 W1-3 L1-4 D3-5 L9+8 D7-3
inward&seam SH4+10 SH5-3 SH7-4 A1-6 L7-5
inward&short SH4-4 L1-3 L3-4 L9+6
inward&shoulder SH3-3 SH4+3
inward&shoulderTip SH1-4 SH2+5 SH3-7 SH4+7 SH5-4 SH7-4 D2-3
inward&show L9-3 D6+5
inward&sleeve SH3-3 L1-3 L3-5 L4-3 L9+8 D1-4 D7-3
inward&sleeveHem L9+10 D7-4 D8-4
inward&sleeveSeam SH3-6 SH4+6
inward&strain SH2+6 SH4-4
inward&swing B4-5 B6+5
inward&tight SH4+12 B4-3 B5-5 B6+5 A1-11 A2-3 W3-4 L7-6 X2-4
inward&uneven W8+4 L8-3
inward&waist B2+4
long N7-3 SH3+4 B2-4 B4+11 B5-7 B6-5 B9+7 B14+7 A2-4 A4-3 A5-6 K5+9 W1-6 W2+11 W5-4 W10-4 L1-5 L2+6 L4-6 D5-5
long&loose B8+3
long&low SH3-4 B14+4 W12+3
long&open D8+4
long&outward L9+4
long&rise W1-3
long&seat L4-3
long&short K3-4 W1-4 W11+3
long&shoulder N5-5 SH2-4 SH3+6 SH4-7 SH8-3 B4-4 B9-3 K5-4 L2-3
long&shoulderSeam N6-4 SH2-5 SH3+13 SH4-3 SH5-6 SH6-9 B4-3 B14-4 W2-7
long&side W11+3
long&sideSeam W6-3 W7-3 W11+6
long&sleeve B4-4 B9-5 B10+7 B14-7 K2-4 K5-8 W2-5 L1-4 L2-6 L3-4 L4-8 L6-5 L9+7 D1-4 D5-3 D6-4
long&sleeveCap SH3-8 B4-5 B8-3 B9-4 B14-4 K5-4 W2-6 L1-11 L2+13 L7-10 L9-3 D1-3 D8-3
long&sleeveHem L9-5 D7-3 D8+6
long&tight B2+4
long&twist L9-5 D7-3 D8+6
long&underBust B14+4
long&up B14-4 K3+4 W2-3
long&upperBack B4-3 B14-4 A4-9 K1-5 K3-8 K5+10 K6-4 W2-4
long&upperChest B4-4 B9+14 B10-7 B11-7 B14-7 B15-3 W2-4
long&upright B10+4
long&waist SH3-5 K6-3 W1-6 W5-3 W12+7
long&waistDart W2-6 W12+6
long&wavy N1+3
long&whole K3+4 W1-4 X2-3 X3-3
longWaisted N1-8 N2-8 N3-8 N4-8 N5-8 N6-8 N7-8 N8-8 SH1-9 SH2-8 SH3-9 SH4-9 SH5-8 SH6-8 SH7-8 SH8-8 B1-8 B2-9 B3-8 B4-9 B5-7 B6-8 B7-8 B8-8 B9-9 B10-9 B11-8 B12-8 B13-8 B14+3 B15-9 A1-8 A2-8 A3-8 A4-8 A5-8 K1-8 K2-8 K3-8 K4-9 K5-8 K6-9 K7-8 W1+10 W2+8 W3-11 W4-10 W5-9 W6-8 W7-8 W8-8 W9-8 W10-8 W11-9 W12-10 L1-8 L2-7 L3-8 L4-7 L5-8 D3-8 L6-9 L7-8 L8-8 L9-9 D1-8 D2-8 D4-8 D5-8 D6-8 D7-8 D8-8 X1-8 X2-8 X3-8 X4-8
longWaisted&waist B2-5 B14+7 W1-4 W2+5 W3-5 W4-5 W5-5
looksPregnant N1-4 N2-4 N3-4 N4-4 N5-5 N6-4 N7-4 N8-4 SH1-4 SH2-4 SH3-5 SH4-4 SH5-4 SH6-5 SH7-4 SH8-4 B1+4 B2-4 B4-5 B5-4 B6-5 B7-4 B8-4 B10-5 B11-5 B12-5 B13-5 B14-4 B15-4 A1-4 A2-4 A3-4 A4-5 A5-5 K1-5 K2-4 K3-4 K4-4 K5-4 K6-4 K7-4 W1-4 W2-4 W3-5 W4-4 W5-5 W6-5 W7-4 W8-4 W9-4 W10+10 W11-4 W12-5 L1-4 L2-5 L3-5 L4-5 L5-5 D3-4 L6-4 L7-4 L8-5 L9-4 D1-4 D2-4 D4-5 D5-5 D6-5 D7-5 D8-4 X1-4 X2-4 X3-5 X4-4
looksPregnant&strain B1+7
looksPregnant&tight W10-4
loose B6-4 B8+5 B13+5 A5-3 W2-3 W3-3 W4+6 D4-4 X3+14
loose&low N1-7 N2-3 N8+7 B3-4 B5-4 A2-3 X3-5
loose&lowerBack A4-4 K2+3 X3-4
loose&misses N3-4 N7-4 N8-4 SH5-3 SH8+4 B3-5 B6-3 B8-3 B13-5 A3-4 A4-6 K1-3 K2-3 K3-4 K5-5 K6+5 W1-3 W3-4 W4-6 W5-4 L4-3 D5-3 X3-8 X4+4
loose&nape N1-4 N3+9 B2-4 K5-3 K7-4 X3-3
loose&narrowBack K2+5 K6-4
loose&neck N1+6 N2-6 N3+4 N5-6 X3-3
loose&oneShoulderLow SH1+4 SH3-4 A2-5
loose&oneSide SH8+10 B3-4 B13-3 A2-4 W4-3 X3-8 X4-3
loose&open B12+4
loose&outward B9-6 B10+5 B11-5 A4-5 W4-3 X3-4
loose&past K5+4 W4+4
loose&placket B12+4
loose&pull B11+4 B15-4 L1+4 D3+3
loose&reach B10+3 A4-5 K1+4 K2-4 W3-4 W4+4 X3-3
loose&realCloth X3-3 X4+9
loose&rise N7+6 N8+3 B2+4 W10-4 D3+4 X3-4
loose&sCurve K2-3 K6+4
loose&sag SH1+4 SH8+4 B13+3 B14-5 A4-6 K5+4
loose&seam A4-5 K1+3
loose&seat N3+3 A2-3 A3+3
loose&shoulder SH3-5 L2+4 L3-4
loose&shoulderTip SH1+15 SH2-11 SH3-9 SH4-8 SH5-4 SH7-6 B13-4 W4-4 D2-4 X3-8
loose&show N3+3 B2+4 W10-4
loose&side SH8+3 A2+4
loose&slant SH1+4
loose&sleeve N1-3 SH1-4 SH3-6 SH5-3 B3-4 B8+7 B13-5 A1-3 A3-3 K1-4 K6-4 W4-5 L2-7 L4+4 L5-3 D3-4 L6-5 L9-3 D1-7 D2-6 D4-3 D5-3 D6-6 X3-9
loose&sleeveCap L1-6 L2+9 L6-9 L7-6 X3-6
loose&sleeveHem D6-3 D7-4
loose&slide N5-4 X3-3
loose&small N2-3 SH3-4 SH4+6 B11-3 X2+4 X3-7
loose&smallBust B3+8 B6-4
loose&stickUp N6+4 SH1-3
loose&strain X2+4 X3-6
loose&swing N8+4 X3-3
loose&tight B1-9 B6-4 B13+7 B15-3 X3-6
loose&tilt SH8-4 K1-3 K5-3 W1-3 W2-4 W3-4 W5+4 D8-3 X1-7 X3-5
loose&toile W4-3 X3-6 X4+7
loose&twist N7-3 N8-4 L4-4 X1+10 X3-8
loose&underBust B3-5 B13+16 B14+5 X3-6
loose&underarm B8-4 B13-4 A1-10 A2+15 A3-3 W4-3 D4-14 X3-7
loose&up D3+4
loose&upperArm SH3-5 L2+3 L3+4 L4-5 L6-4 D1-3 X3-3
loose&upperBack A4+11 K1-7 K3-6 K6-4 X3-4
loose&upperChest B3-3 B9+3 B15-4 X3-5
loose&upright B8-5 B10+9 A4+8 K2-6 K5-5 K6+3
loose&vNeck N1+8 N2-7 X3-4
loose&waist K5-5 K6-3 W1-7 W4+10 X3-5
loose&wavy N3+3 X3-4
loose&whole B13-5 A2-4 W4-5 X3+14
loose&wing SH8+4
loose&wornOn N5-3 N7+4 N8-5 B2-3 X1+3 X3-3
low N1-4 N7-4 N8+4 B3-3 B4-8 B5+10 B6-3 B7-4 A1-4 A2+7 K1-5 K5-6 W2+9 W3-4 W4-5 L1+6 L2-6 D8-6
low&nape N3-3
low&neck N2-5 N3-3
low&oneSide SH3-4 SH8+8 B5-5 W2-5
low&pull K1-3 K4+4
low&reach B1+4 B3-4 B5-3 K1-3 K4+4
low&rise W9-6 W11+5
low&sag B5+4 B7-3 W11-4 W12+4 L9+3 D8-4
low&seam W1+5 W2-5 W5-4 X2-4 X3-3
low&seat N7-5 N8+4 W9+4
low&short B14+3
low&shoulder A4+3 L1-3
low&shoulderTip L1+3
low&show B8-3 A2+4
low&side B8-3 A2+4
low&sideSeam W8+4
low&sleeve SH3+7 L3-3 D2-4
low&sleeveCap N8-4 SH3-8 SH8-3 B5-6 A2-5 W2-6 W5-4 L1+11 L2-13 L6-9 L7-6 L9-4 D1-3 D5-4
low&sleeveSeam SH3+5
low&slide N7-4 N8+4
low&smallBust B4-3 L1+3
low&strain SH2+6 D2-3
low&tight SH2-5 B1-4 B5+4
low&tilt W5+6 L5+5
low&tummy B5-4 W12+4
low&underarm SH1-3 A1-8 A2+6 A5-6 W2-4
low&up N7+7 B2-3 K3-6 W10-5 W11-5
low&upperArm SH3+6 A2-5 L7-3
low&waist B5-4 B14-3 A2-4 W2+10 W3-10 W4-10
low&waistDart W12+4
low&wornOn N7-4 N8+4
lowerBack N4-3 B10-4 A4-5 A5-4 K2+11 K3-7 K5-3 K6+6 W2-4 W11+3 L9+4 D6-5 D7-7 D8-7
lowerBack&narrowBack K2+5
lowerBack&pucker K2+5
lowerBack&upright SH8-4 B10-9 A4-7 K2-11 K6+12 X3-5
lowerBack&wavy K2+5
meal W3+3 L3-4 L8+6
meal&pull L8+4
meal&sleeve L3-4 L8+6
meal&tight W3+4
misses N1-5 N2-4 N4-4 N8-3 SH1-5 SH2-4 SH4-4 SH6-4 B2-4 B3-6 B4-5 B5+7 B7-5 B14-4 B15-5 A1-4 A2-3 K2-7 W3-4 W4-4 W5-3 W8-4 W12-4 L2-5 L6-4 L7-4 D2-3 X4+7
misses&nape N3+9 K7-7
misses&neck N1-4 N2-3 N3+3 SH7-4 A5+5
misses&neckSide N2-4 N5-3 N6+5 SH3-4 SH4-4 SH5-3
misses&oneSide N5-5 SH3-4 SH8+7 B5-3 X3-5 X4-4
misses&outward B5-6 B6+6
misses&overarm D2-4 D5+5
misses&peak N1-4 N2-4 B4-4 B5-3 A5+5
misses&pinch W1-4 W3-4 W4+5
misses&pointy B1+4 B5+4 B7-5 B15-3
misses&realCloth X4+4
misses&roundBack SH7+4 B4-4 K3-4
misses&sag SH8+4 B5-3 D1+3
misses&seam N6-3 SH4-5 SH6-3 B1-4 B6-3 K1-3 K3-4 W3-3 L7-4 X2+6
misses&shoulder N2-3 N5+4 N6+4 SH3-6 SH5-3 SH6-4 SH8-3 B5-4 B15-3 A5-3
misses&shoulderSeam SH3-5 SH5+5 SH6-5
misses&shoulderTip SH7+4
misses&show D6+4
misses&sideSeam A5-4 W6+8 W7+3 W8-5
misses&sleeve SH5-5 A5-3 L1-4 L3-5 L6-3 D1-4 D2-5 D5+4
misses&sleeveCap B5-7 L1+10 L7-8 L9-3 D5-4
misses&sleeveSeam L4+3
misses&slide N7+3 N8+3
misses&slopingShoulders N5-3 SH2-5 SH3+7 SH8-4 B1-7 B3-6 B4-3 B5-5 B6-4 X4-4
misses&smooth B5-4 B7+4
misses&stickUp SH7-3 D1+3
misses&strain B1+8 B5-5 B6-4
misses&swing SH7+3
misses&tight SH4-4 SH5-3 B3-3 B15-3 W3-3 L7-3 X2+6
misses&tip SH5-3 B4+5 B6-3
misses&toile SH8-3 B5-3 X3-3 X4+11
misses&underBust SH7-3 SH8-3 B5+4 B6-4 B7-3 B13+3 B14-7 K6-3 W1+5 W2-4 W3-4 W4-4 W6-3 W11-3 L1-3 D5-3 X4-5
misses&underarm B5-6 B6+6 A5-3
misses&upperChest B4-6 B5+6 B7-4
misses&waist N3-3 N7-4 SH5-4 SH7-3 SH8-3 B2-3 B5-5 B13-8 B14-4 A3-4 A4-5 K1-3 K2-8 K3+6 K4-3 K5-5 W3-8 W5-3 W7-3 W9-3 W11-3 W12-4 L1-3 D5-3 X4-5
misses&walk SH5-5
nape N1-4 N2-4 N3+15 N4+6 N8+7
nape&neck N1-3 N2-5 N3+4 N5-3
nape&open N1-5 N3+8
nape&outward N4+3
nape&past N4+6
nape&reach N2-4 N3-6 N4-5 N5-4 K7+5
nape&rise N2-4 N3-7 N4-6 N7-4 N8+11 B2-7 K3-6 D3-4
nape&sag N8+4 K5+3 K7-4 W5-4
nape&short N4+7
nape&show N3+4
nape&sit N2-4 N3+3 N5-3 N8-3 K7-3
nape&skin N1-4 N3+4
nape&slide N2-4 N3-4
nape&small N2-9 N3+8 N4+4 N8-5 K7-7 X2-5
nape&smallBust N3+4 K7-4
nape&stickOut N3+7 K7-4
nape&strain N3-3 N4-6 K7+7
nape&tight N4+4
nape&up N3-6 N8+7 K7-5
nape&wavy N3-4 N4+8 N8-3 K7-5 X3-3
nape&wide N3+8 N4-5 N5-8 N8-4 A4-3 K7-4
narrow N2-4 N5-3 N7-3 SH2-5 SH3-9 SH4+7 SH5-4 SH6-4 B1-3 B2-4 B3-7 B4-6 B5-6 B6+10 B8-3 B9-4 B10-6 B11+9 B12-4 B13-3 B14-5 B15-5 A1-4 A4-4 A5-5 K1+3 K3-4 K4-4 W3-4 W9-4 W10-3 L1-3 L4-3 L7-3 L8-4 L9-4 D1-4 D2-5 D6-3 D7+4 D8-5 X2+5 X3-5
narrow&shoulder N5-5 SH2-6 SH3-9 SH4+9 SH5-3 SH8-3 B6-5 B11-7 K1-6 D2-3 D7-3 X2-5
narrow&sleeve SH3-5 SH4-3 B6-4 L3+6 L4-5 D1-3 D2-4 D7-6
narrow&sleeveHem B11-4 L3-5 L9-7 D2-3 D6-4 D7+10 D8-7
narrow&upperArm L3+7 D2-3
narrow&upperChest B9-6 B10-4 B11+7
narrow&whole SH4-4 B6-6 B11-7 K1-6 W1-3 L3-3 D7-4 X1-3 X2+8 X3-8
narrow&wide B10-4 B11+4
narrowBack N1-8 N2-6 N3-8 N4-8 N5-7 N6-7 N7-9 N8-8 SH1-8 SH2-7 SH3-9 SH4-9 SH5-7 SH6-7 SH7-7 SH8-7 B1-7 B2-7 B3-8 B4-7 B5-7 B6-9 B7-7 B8-7 B9-8 B10-9 B11-10 B12-7 B13-8 B14-7 B15-7 A1-7 A2-7 A3-8 A4+6 A5-7 K1+12 K3-10 K4-7 K5-9 K7-7 W1-7 W2-7 W3-7 W4-8 W5-7 W6-7 W7-8 W8-7 W9-7 W10-7 W11-7 W12-7 L1-7 L2-8 L3-8 L4-8 L5-7 D3-7 L6-7 L7-7 L8-7 L9-7 D1-7 D2-7 D4-9 D5-9 D6-7 D7-8 D8-7 X1-7 X2-9 X3-10 X4-8
narrowChest SH6-4 B1-7 B3-6 B9-7 B10+9 B11+5 B12-3 A4-7 A5-4 K6-4 W4-3
narrowChest&upright B9-5 B10+10 B11-6 A4-6
narrowShoulders N1-7 N2-7 N3-7 N4-7 N5-10 N6-8 N7-9 N8-8 SH1-9 SH2-10 SH3+17 SH4-12 SH5-9 SH6-9 SH7-9 SH8-10 B1-7 B2-7 B3-8 B4-7 B5-7 B6-9 B7-7 B8-7 B9-7 B10-8 B11-9 B12-7 B13-7 B14-7 B15-7 A1-7 A2-7 A3-7 A4-8 A5-6 K1-9 K2-7 K3-7 K4-8 K5-7 K6-7 K7-7 W1-7 W2-7 W3-7 W4-7 W5-7 W6-7 W7-7 W8-7 W9-8 W10-8 W11-7 W12-7 L1-9 L2-7 L3-8 L4-8 L5-7 D3-7 L6-7 L7-8 L8-7 L9-7 D1-7 D2-9 D4-7 D5-7 D6-8 D7-9 D8-7 X1-7 X2-9 X3-6 X4-7
neck N1+7 N2+10 N5+10 K7+3
neck&open N2-8 N6+4 B8-5 B12-6 B15-3 K7-4
neck&outward N1-5 N2-8 N5+9 SH1-5 SH8+3 B15-5
neck&past N2-5 N5+7
neck&peak N1-6 N2-7 N3+3 N4-4 N5-6 N8-4 B8-3 A5+7 K7-4
neck&placket B12-4
neck&pull N1-5 N2-4 N7+4 B1-5
neck&reach N1-5 N2-4 N3-6 N4-5 N8-6 B10+6 A4-3 K7+7 X3-4
neck&rise N4-4 N6-3 N8+7 B2-5 K3-6 K7-7
neck&roundBack N1-9 N2-11 N3-5 N4+6 N5-9 N6-6 N7-4 N8-4 SH1-5 SH7-4 SH8-3 B15-5 A5-5 K2-4 K3-12 K6-3 K7+10 W7-3 L2-3 L3-4 D4-3 D5-3
neck&sCurve N1-4 N2-5 SH7-5 A5+4 W8-3
neck&sag N1-3 N5-3 N6-3 N7-3 SH7+4 K5+3
neck&seam N1-5 N6+4
neck&seat W9-4
neck&short N1-3 N2+5 N6-4 B2-8 W1-6
neck&shoulder SH3-3
neck&shoulderSeam N1-9 N2-5 N3-3 N6+7 SH1-5 SH2-3 SH3-4 SH6-5
neck&shoulderTip N2-4 SH1+4 SH2+4
neck&show N1+4 N2-8 N5+5
neck&side N5+4 SH1+3
neck&sit N1-5 N3+3 N4-4 N5+8 N8-4 K7-4
neck&slant SH1+7
neck&slide N5+4
neck&small N1-6 N2+12 N5-5 N7-3 X2-6
neck&smallBust N5+5
neck&stickOut N2-4
neck&stickUp N6+9 SH1-3
neck&strain N1-5 N5-5 B1-7 B15+5
neck&strap N1-5 N5+6
neck&swing SH1+10
neck&throat N1-6 N2+5
neck&tight N1-6 N2+7 B1-5 B2-3 B15+4 W9-3
neck&tilt N5-5 SH8+3
neck&underarm N5-3 SH1+7 A2-4 A5-4 D4-4
neck&up N5+4 N7-4
neck&upperBack N1-6 N2-4 N6+3 SH1-3 B15-3 A4-4
neck&upright N1-4 N5-4 B10+7 A4-3
neck&wide N1-9 N2-10 N5+15 N6-3 SH1-3 SH3-4 B6-4 B10-4 A4-5 D6-4 X3-4
neck&wornOn N2-4 N5+3 N7-4
neckSide N2+6 N5+3 N6+13 SH1-5
neckSide&open N6+8
neckSide&outward N1-3 N2-6 N5+10 N6-5 B6-5
neckSide&past N1-4 N2-6 N4-3 N5+9 N6-7 B4-3 B6-6 K7-3
neckSide&pointy B15+3
neckSide&pull N2+7 N6-5 B1-4 B15+6
neckSide&rise N6+6
neckSide&sag B15+4
neckSide&seam N6+6
neckSide&shoulder N6+8 SH1-4 SH3-4
neckSide&shoulderSeam N6+10
neckSide&shoulderTip N2-8 N5-3 SH2+6 SH4-4
neckSide&sit N2-4 N6+3 SH3-4 SH4-4
neckSide&slant N2+4 N6-4 SH1+5 SH8-4 L1-3
neckSide&slide N5+5
neckSide&small N2-4 N6+3 X2-3
neckSide&stickUp N2-4 N5-3 N6+8 D1-4
neckSide&strain N2+10 N6-4 B1-5 B15+4
neckSide&tight SH2+3
neckSide&tilt N6+3 SH1+5 SH8-3
neckSide&tip N6+6 SH2-3
neckSide&up N6+3
new N2-3 N3-4 N4-4 N5-4 N6-4 N7-4 N8-3 SH1-4 SH2-4 SH3-4 SH4-4 SH5-4 SH6-4 SH7-4 SH8-3 B1-3 B2-4 B3-4 B4-4 B5-4 B6-4 B7-4 B8-4 B9-4 B10-4 B11-3 B12-4 B13-4 B15-4 A1-3 A2-4 A3-4 A4-4 A5-3 K1-3 K2-4 K3-4 K4-4 K5-4 K6-4 K7-4 W1-4 W2-4 W3-3 W4-4 W5-4 W6-4 W7-4 W8-4 W9-3 W10-5 W11-4 W12-4 L1-4 L2-4 L3-4 L4-4 L5-4 D3-5 L6-4 L7-3 L8-4 L9-4 D1-4 D2-4 D4-4 D5-5 D6-4 D7-3 D8-4 X1-3 X3-4 X4+16
new&realCloth X4+11
new&toile X4+6
new&washed N1-4 N2-3 N3-4 N4-3 N5-4 N6-4 N7-4 N8-4 SH1-4 SH2-3 SH3-3 SH4-3 SH5-4 SH6-4 SH7-3 SH8-4 B1-3 B2-4 B3-4 B4-4 B5-4 B6-4 B7-5 B8-4 B9-4 B10-4 B11-3 B12-3 B13-3 B14-4 B15-4 A1-3 A2-4 A3-4 A4-4 A5-4 K1-3 K2-4 K3-4 K4-3 K5-4 K6-4 K7-5 W1-4 W2-4 W3-3 W4-4 W5-4 W6-4 W7-4 W8-4 W9-3 W10-3 W11-3 W12-4 L1-4 L2-4 L3-3 L4-4 L5-4 D3-5 L6-4 L7-3 L8-3 L9-4 D1-3 D2-3 D4-3 D5-4 D6-4 D7-3 D8-3 X1-3 X3-4 X4+9
oneShoulderLow N1-7 N2-8 N3-7 N4-8 N5-11 N6-9 N7-8 N8-8 SH3-5 SH4-11 SH5-11 SH6-10 SH7-9 SH8+25 B1-10 B2-8 B3-8 B4-8 B5-8 B6-8 B7-7 B8-8 B9-8 B11-8 B12-8 B13-8 B14-8 B15+4 A1-8 A2-10 A3-8 A4-8 A5-8 K1-9 K3-9 K4-10 K5-10 K6-8 K7-8 W1-8 W2-8 W3-7 W4-7 W5-8 W6-8 W7-8 W8-8 W9-7 W10-7 W11-8 W12-8 L2-8 L3-9 L4-9 L5-8 D3-8 L6-8 L7-7 L8-8 L9-9 D1-8 D2-9 D4-7 D5-8 D6-8 D7-8 D8-8 X1-9 X2-8 X3-8 X4-8
oneShoulderLow&oneSide SH8+7
oneShoulderLow&pointy B1-4 B15+5
oneShoulderLow&pull SH8-4 B1-6 B3-4 B15+6
oneShoulderLow&sag SH1+5 SH3-4 SH8-3 A2-5
oneShoulderLow&sleeve SH1-6 SH3+4 SH8-6 B15-5 A1-5 L1+8 L3-7 L4-4 D2-4
oneShoulderLow&slopingShoulders SH1+8 SH2-4 SH8-7 A2-5 L1-3 L3-4
oneShoulderLow&strain SH8-3 B1-5 B15+6 L1+7 L3-4 D2-3
oneShoulderLow&swing SH1-4 SH8-4 B8-4 B10+5 A5-4
oneShoulderLow&tight SH8-6 B1-7 B3-4 B15+7 L1+5 L3-3
oneShoulderLow&underarm A1-4 L1+7
oneSide N2-3 N4-4 N5+7 N7-7 N8-7 SH1-4 SH2-4 SH3-4 SH4-3 SH5-3 SH8+30 B1-3 B2-4 B3-4 B4-7 B5-4 B7-3 B8-6 B9-3 B10-3 B14-4 B15-3 A1-3 A2-8 A5-7 K2-4 K3-4 K4-4 K5-4 W2-4 W4-3 W5-4 W6-3 W7-3 W9-4 W11-7 L1-4 L2-4 L3-5 D3-4 L6-3 L8-4 D1-3 D2-4 D4-3 D5-4 D6-3 D7-3 D8-3 X2-3 X3-4 X4-4
oneSide&peak SH7+5 SH8+4 W11-4
oneSide&pointy B4-4 B6+4
oneSide&pull N2-5 N3-3 N5-5 N7-5 SH2-5 SH4-4 SH5-4 SH6-3 SH7-4 SH8+5 B1-6 B2-4 B6-4 B7-3 B8-5 B10-3 B11+4 B12-3 B15-6 A1-5 A3-3 A5-4 K1-4 K3-3 K4-7 K6-3 K7-3 W3-5 W5-3 W6-4 W7-4 W9-4 W10-4 W12-3 L1-4 L3-4 L4+5 L5-3 D3-4 L6-3 L7-4 L8-4 L9-5 D1-4 D2-8 D6-3 D7-4 X1-4 X2-6
oneSide&rise D3-4 L9+6
oneSide&sag SH8+13 B14-3 A2-5 K5-3 W5-5 X3-4
oneSide&short L9+7
oneSide&side SH8+5 L4+5 D3-4 L9+6
oneSide&slant SH8+5 A2-4 L9-4 X1-4
oneSide&sleeve SH8-14 L1-3 L2-5 L3-4 L4+10 L6-6 D1-4 D2-4 D5-6 D6-4 D7-4
oneSide&sleeveHem SH8-7 D3-4 L9+8 D7-3 D8-3
oneSide&slide N5+6 N7-7 N8-7 SH8-7 B2-4 L4-4 X1+5
oneSide&swing N5+7 SH3-4 SH7+3 SH8-8 B4-5 B6+4 W9-4 L4-8
oneSide&wing SH8+8 A2-4
open N2-3 B1-3 B8+4 B12+10 A1-4 A2+5 K7-4 W10-5 L3-3 L9-3 D1-7 D4-4 D6+6 D8-3
open&placket B8-3 B12+14
open&pull L1-5 L2-3 D2+7
open&seam N6+4 SH1-4 SH2+5 SH4-3
open&shoulder N3+3 N5-4
open&show B8-3 D6+3
open&sleeve B12-4 L2-4 L3-8 L4-6 L6+6 D1-6 D6+3 X3-6
open&sleeveCap B12-5 K4-3 L1-7 L2-5 L6-3 L7-4 D1-3 D2+10 D6-3 D7-4
open&sleeveHem N1-5 N3-4 N6-3 B8+7 B12-7 B13-3 A3-5 L2-5 L6-4 L9-10 D1-10 D2-3 D6+9 D7-14
open&sleeveless N1-3 N3-3 SH5-4 B12-4 A3+4 A4-4
open&strain SH1-4 SH2+5 SH4-3 B8-3 L1-4 D2+6
open&tight B1-5 B2-4 B12+5 B15-3 D1-5 D2-7 D6-4 D7+6
open&twist N3+3 B8-3 D8+4
open&underBust N1-3 B5-3 B8-5 B12-4 B13+7 B14-4 A3-3
open&underarm N6-3 SH1-3 SH7-4 B8-8 B12-5 A1-8 A2+10 A3-5 D4-9
open&waist K6+3
open&wide B8-5 D6+4
outward N1-3 N2-6 N5+7 N7-6 SH3-3 SH4-3 B3-3 B4-8 B5-5 B6+8 B9-6 B11-3 B15-4 A4-5 W1-4 W2-3 W3+4 W4-5 L3-4 D1-4 D2-3 D6-3
outward&past N1-4 N2-8 N3-3 N4-3 N5+9 N6-7 B4-10 B5-4 B6+9 B7-3 K7-3 W3-3 W12-3
outward&pinch SH1+3 W3-6 W4+5
outward&pull B2+8 B13-3 W3-5
outward&reach A4-4 W10+4 X3-4
outward&rise B2-4 W10+6
outward&seam SH1-5 SH2+6 SH3-4 SH4-6 SH7-4 A4-5 K4+5 W7-5 X1-4
outward&shoulder N5+4
outward&shoulderSeam N7-4 SH5+5
outward&shoulderTip SH2+5 SH3-5 SH4-7 SH7-5
outward&sit N2-9 N5+9 B6+3
outward&slant B1-8 B2+7 B15-4
outward&sleeve L2-3 L9+4
outward&sleeveCap L2+4
outward&slide N7-6 N8-3 SH3-4 SH5+4 SH6-3 B2-4 W3-5 L4-3 X1+5
outward&small N2-5 N3-3 N5-4 SH1-3 SH2-3 SH4-5 SH7-3 B1-5 B2-3 B6-4 B7-3 B11-5 A1-4 K1-5 K4-4 W3-6 W9-3 W10-4 L2-3 L3-4 L7-5 L8-3 D2-3 D7-5 X2+7 X4-4
outward&smallBust N5+3
outward&stickOut D1+4
outward&strain B1-5 B2+4 B15-4 K4+3
outward&swing B4-4 B6+7
outward&tight B2+6 B3-5 B15-4 K4+3 K5-5
outward&tilt N5-4 SH1-3 SH8+3 K1-7 K4+4 W7-4 X1-4
outward&tummy B2-4 W10+5
outward&underBust B2+4 B13-6 B14+6 W1-3
outward&upperArm L6+3
outward&upperBack A4-3 K5+3
outward&upperChest B10+6 B11-6
outward&waist W1-7 W2-4 W3+9 W5-3
outward&whole SH1+5 SH2-4 SH8-3 A5-4 D5-4 X3-6
over N4-8 N8+5 SH2-5 SH3+5 B6-6 B7-11 B8-4 B11-4 K1-3 K4-3 K6-11 W4-4 W6-4 L6-4 D1-3 D7-3
over>apex B1-4 B3+5 B4-9 B5+8 B6-10
over>arm SH1-6 SH3+9 SH4-3 SH5-5 SH8-3 A1-5 K1-4 L1-9 L3+4 L5-3 L6-4 L8-3 D1-5 D2-5 X1-3
over>armhole SH3-4 SH4-3 SH7+5 A1-5 L7+4
over>back SH3-4 K2-5 K5+6
over>backWaist N8-4 B2-6 B9-4 B10-4 B14+5 K2+6 K3-7 K6-8 W3-4 W4-4 W5-4 W10-3 L6-3 L7-3 D8-4 X1-4
over>blade SH3-4 SH4-5 SH5-3 SH7-5 SH8-3 B2-3 B8-7 B9-4 B14-3 A2-4 A3+5 A4-4 K1-8 K3+4 K5+6 W1-5 L7-3
over>bust B1+6 B6-5 B11-9 B13-4
over>centre K2-5 K5+8
over>chest B1+4 B3-4 B10+3 B11-9 B12-3
over>collarbone N5-3 N7-3 SH3-4 SH6+4 A1-3
over>front B10-4 A5-5 W6+4 W9-3 L4+7 D5-6
over>hem W9+3
over>hip W1-4 W2+10 W3-4 W4-7 W7-3 X2-3
over>neckSide N2-5 N5-4 N6+6 SH3-5 SH4-5 SH5-3
over>seat B7-3 W9+7 W12+3
over>shoulder N7-3 SH4+7 SH5-5 SH7-5 K3-3 K7-3 L1-10 L2-4 L3-3 D3-3 L7-4 D1-4 D7-3
over>shoulderTip SH1-5 SH2-8 SH3+8 SH6-6 SH7-5 L1-4 D2+4 D7-4 D8-4 X2-3
over>side SH3-6 L4-4 L6+3 L7-3
over>sleeve SH1-7 SH2-3 SH3+7 SH4-5 SH5-5 SH8-3 B15-3 A1-6 K1-4 W2-4 L1+7 L2-4 L5-4 L7-4 L8-3 L9-4 D1-6 D2-8 D5-7 D6-5
over>sleeveCap L2+5 L3-4 L6-7 L7+8 D2-6 D7-4 X2-5
over>sleeveHem D8+5
over>spine K7+4
over>tummy B5-3 B7-3 W10+7
over>underBust SH1-3 B2-3 A1-5 A2+8 A5-6 K2-4 W1+10 W2-8 W3-5 W4-7 D4-7
over>upperArm SH3+6 A1-3 A2-6 K4-3 L1+3 L3-5 L4-3 L7-4
over>upperBack A4-5 K2-3 K5+5
over>upperChest B3-3 B9+7 B10-8 B11-4
over>waist N7-3 B5-3 K2+4 K3+6 K5-5 K6-9 K7-3 W1-8 W3-6 W4-4 W5-3 D2-3 X4-3
overarm N2-5 N3-3 N4-5 N6-4 N7-5 N8-3 SH2-5 SH3-3 SH4-7 SH5-6 SH6-4 SH7-3 SH8-4 B1-5 B2-6 B3-3 B4-4 B5-4 B6-4 B7-4 B8-3 B9-3 B10-3 B11-5 B12-4 B13-3 B14-3 B15-4 A1-4 A3-3 A4-4 A5-4 K1-5 K2-4 K3-6 K4-4 K5-4 K6-4 K7-3 W1-7 W2-3 W3-5 W4-3 W5-3 W6-4 W7-5 W8-4 W9-4 W10-4 W11-3 W12-3 L1-8 L2-5 L3-9 L4-6 L5-3 D3-5 L6-5 L7-7 L8-6 L9-8 D1-5 D2+14 D4-4 D5+5 D6-4 D7-9 D8-5 X1-4 X2-6 X3-3 X4-4
overarm&pull D2+8
overarm&short SH4-6 B2-7 K3-6 W1-8 L1-7 D3-4 L7-4 L9-7 D2+10 D5-6
overarm&strain L3-4 D2+4
overarm&tight SH2-3 B1-3 K1-3 L1-4 L3-6 L7-4 L8-3 D2+8 D5-5 D7-7 X2-4
past N5+4 N6-3 SH1-3 SH2-5 SH3+7 SH7-5 B4+12 B5-10 B7-3 K2-4 D1-4
past&pointy B4+6 B5-3 B6-3
past&pull W3+6 L3+3
past&seam SH1-6 SH2-8 SH3-7 SH4+7 SH6-3 SH7-6 B4-3 L3-3 L7+4 D1-4 D2-4
past&shoulder N5-4 SH3+9 SH4-5 SH5-6 SH6-6 SH7-4 L1-3 D1-5
past&shoulderSeam N5-4 N6-4 N8-3 SH3+5 SH4-6 SH5+4 SH7-3 B4-3
past&shoulderTip SH1-8 SH2-9 SH4+8 SH6-4 SH7-9 B4-4 L7-4 D1-4 D2-4
past&sit N2-5 N5+7
past&sleeve L3-3 L7+4
past&sleeveSeam SH3+3 L3-3 L4-5 L7+5 D2-5
past&smallBust SH3-3 SH6+3
past&stickOut N6-3 SH1-6 SH2-5 SH4+6 SH5-6 SH7-6 B4-3 W10-3 D1-6
past&swing N5-4 SH3+4 SH4-5 SH5-5 SH6-6 B4+10 B5-4 B6-16
past&tight B4+6 B5-4 B6-5 L7+4 D2-4
past&tip SH3-4 SH5+7 SH6-4
past&underBust B13-5 K5-4 W2+4
past&upperArm L3+4
past&upperBack A4-6 K5+10
past&upperChest B9+6
past&waist W1-3 W2+3 W4+3
past&whole B14-3 W2+4
peak N1-5 N2-3 N7-3 SH1-8 SH2-4 SH3-6 SH4-5 SH5-4 SH7+19 B4-3 A1-3 A2-4 A5+4 W6-3 W8-4 W11+3 L2-6 L3-5 L4-4 L7+4
peak&pointy SH7+6 B4-4
peak&pull L1+4
peak&sCurve N1-4 N2-4 A5+4 K3-3 W8-4 X1-3
peak&sag SH3-4 SH7+4 B14-3 A2-4 W6-5 W7-5 W8-5 W11+5
peak&shoulder SH3-7 SH4-5 SH7+10
peak&shoulderSeam N6-3 SH2-4 SH3-4 SH4-5 SH5-4 SH7+10
peak&shoulderTip SH1-8 SH2-4 SH3-4 SH4-4 SH7+9
peak&side W11+5
peak&sideSeam SH7-7 SH8-6 B9-3 B14-4 A2-4 K5-4 W2-3 W5-6 W6-7 W7-6 W8-6 W11+9
peak&sleeve SH7-4 L2+4
peak&sleeveCap SH7-7 B3-4 L2-11 L6-5 L7+8 D1-3
peak&sleeveless SH7+3
peak&small SH4-5 SH5-3 SH6-3 SH7+5
peak&strain B15+4
peak&tip SH4-4 SH7+8 B4-4
pinch SH1+8 SH2-7 SH3-3 B3-5 B6-4 K2-5 K6+4 W3-4 W4+3
pinch&shoulderTip N2-3 N5-3 SH1+10 SH2-7 SH3-4 SH4-5 SH7-3
pinch&tight SH1-3 W4-3
pinch&underBust B13+4 B14-4
pinch&underarm A1+3
pinch&upperArm A1-4 L3+6 D7-3
pinch&waist K6-5 W1-5 W2-4 W4+7
placket N1-4 N2+5 SH4-4 B1-7 B3-3 B11-5 B12+22 B15-4 A3-5 K1-3 D2-4 D6-6 X2-5
placket&pull B1-4 B12+4 B15-4
placket&show N1+4 B8-7 B12+6 A2-4 D6-7
placket&small N2+9 N7-3 SH4-5 SH7-4 B1-3 B11-3 B12-9 A1-4 K1-3 K7-3 W3-4 L2-4 L7-3 D2-4 X2-6 X4-3
placket&strain N2-9 SH4-3 B1-3 B11-5 B12+14 B15-4 A1-4 K1-5 K4-5 W3-6 W9-4 W10-3 L3-5 L8-5 D2-4 X2-7
placket&tight B1-4 B12+3
placket&wornOn N1+4
pointy SH2-6 SH4-3 SH7+6 B3-4 B4+16 B7-6 K1-3 W6-4 W12-5 L6-4
pointy&pull B1+5 B4-5 B5-4 B6-4
pointy&seam B1-4 B15+4
pointy&shoulder SH3-3 SH4-3 SH7+7
pointy&shoulderTip SH1-4 SH2-7 SH3-4 SH4-4 SH5-4 SH7+9 B4-6
pointy&side N8-4 SH6-4 B2-4 B4-5 B8-3 A5-4 W10+6
pointy&sit B4-3 B6+4
pointy&slant B1+4 B15-4
pointy&stickOut SH7-3 B4-7 B7+6
pointy&strain B4-4 B15+4
pointy&swing B4-5 B6+5
pointy&tip B6-3 B7+4
pointy&upperChest B4-6 B5+5 B7-3
pointy&waistDart B6+4 W12+3
prominentBlades N1-6 N2-8 N3-6 N4-6 N5-8 N6-7 N7-7 N8-7 SH1-9 SH2-10 SH3-8 SH4-9 SH5-9 SH6-8 SH7-6 SH8-9 B1-7 B2-7 B3-6 B4-7 B5-6 B6-6 B7-6 B8-9 B9-6 B10-6 B11-8 B12-7 B13-6 B14-6 B15-8 A1-9 A2-7 A4-6 A5-6 K1-9 K2-6 K4+18 K5-7 K6-7 K7-7 W1-7 W2-6 W3-8 W4-6 W5-6 W6-7 W7-7 W8-6 W9-7 W10-7 W11-6 W12-6 L1-7 L2-6 L3-8 L4-6 L5-6 D3-7 L6-6 L7-8 L8-8 L9-6 D1-7 D2-9 D4-6 D5-6 D6-6 D7-7 D8-6 X1-6 X2-9 X3-6 X4-6
prominentBlades&pull SH2-3 K1-3 K3-4 K4+7 D2-3
prominentBlades&strain N2-4 SH2-5 B1-4 B11-4 B12-4 B15-4 A1-3 A3-4 K1-6 K4+10 W3-5 W9-4 L3-4 L8-4 D2-4 X2-6
pucker SH3-4 SH7-5 B4-6 B5-5 B7+4 A1-5 A2-4 K2+6 W9-4 L1-4 L2-14 L3-4 L4-5 L6+12 L7+7 D1-3 X2-3
pucker&sag B5-3 B7-4 W5-3 W10-4 W12+3
pucker&seam L6+3
pucker&side SH3-3 L4-4
pucker&sleeve SH3-5 SH4-4 L1-3 L3-4 L4-5 L6+3 D1-5 D5-3 D6-5
pucker&sleeveCap L1-4 L2-14 L6+13 L7-4
pucker&sleeveSeam SH3-4 L4-6 L7+4 X2-5
pucker&small L6+6 L7-3 X2-5
pucker&wavy L6-5 D8+4
pucker&whole L6+4 X2-5
pull N7+6 SH4-3 K1-4 K4+4 L7-3
pull&reach N7-4 SH2-3 SH5-3 K1+3 K3-3
pull&rise N5+4 N7-3
pull&roundBack L3+7
pull&sag N2-4 N7+4 A2-5 K4-3 D4+5
pull&seat N7+3 N8-3 SH5-3 W9+5
pull&short B13-4 W1-4
pull&shoulder SH3-5 SH4+4 SH5+4 B2-4 L2-3 L3-4 D1-3 D2-6
pull&shoulderBack N2-3 N5+4 N7-4
pull&shoulderSeam SH6-4 B1-4 B15+7
pull&shoulderTip SH1-7 SH2+9 SH4-13
pull&side SH8-5 B1-3 B2+5 L4+4
pull&sideSeam N7-5 W6+6 W7+5 W8-5 W9-5 W10-4
pull&slant B2+5 B11-6 B15+5 K1-5 K4+10 L1+5
pull&sleeve N8-3 SH3-3 SH5+9 SH8-4 K4-3 W3-3 W6-3 L1+4 D3-4 L6-4 L7-4 L8+3 D1-5 D5-5 D6-4 D7-5 X2-4
pull&sleeveCap SH4+3 K4-3 L1+8 L2-7 L6-6 D2+4 D7-3
pull&sleeveHem SH2-6 SH4-6 D2+4 D7-3
pull&slide N7+6 N8-3
pull&strain N7+5 N8-4 SH4-3 L1+4
pull&swing W7+3 L1+3
pull&throat N2+4 K4-4
pull&tight B2+5 B3-3 B15+4
pull&tilt K1-4 K4+4
pull&tip SH2+5
pull&tummy W10+7
pull&underarm SH4-3 A2-5 L1+6 D2-4 D4+3
pull&up N5+3 D3+4
pull&upperArm L3+9 D3-3
pull&upperBack N7-5 SH5-3 B11-6 A4-10 K1-3 K3+8 K4-6 K5-10 L3-3
pull&upperChest B9-10 B10-4 B11+8 B15+6 K4-4
pull&waist B2+5 W1-5 W2-5 L1-3 L5+4 D2-3
pull&whole N7-5 N8-4 SH2-4 SH5-3 B1-4 B11-4 B15-3 K3-3 K4-5 W3-3 L1-5 L3-6 D3+3 L8-5 D2+6 D5-3 D6-4 D7-3 X1-5 X2+9 X3-10
pull&widerHips W7+4
pull&wornOn N2-3 N5+3 N7+12 N8-16 SH2-3 SH5-5 SH6-4 B1-4 B11-3 A5-4 K1-4 K3-3 W3-3 W6-6 X2-4
reach N1-3 N2-5 N3-7 N4-5 SH1-4 SH4-4 SH5-4 B2-4 B5-3 B10+3 A1-4 K1+17 K2-3 K3-6 K5-7 W3-3 L4-5 L8-3 D5-4 D6-6 X2-4
reach&rise D3+4
reach&seam A4-5 K1+3 K3-3
reach&seat SH5-4 K1+4
reach&shoulderTip SH1-5 SH2+5 SH4-5 SH7-3
reach&show N5-4 B4-4 B8+8 A2-6 K1-4 D6-5
reach&sleeve L3+4 L4-5 D3-3 L9-3
reach&sleeveCap D3+3 L7+4
reach&strain B11+5 K1+3 W3-3 L7+3
reach&tight N2-4 SH2-4 B1-5 B8-3 B10-3 A1-5 A2+5 A5-6 K1+10 W3-4 L7-5 L8-4 D2-3 D7-3 X2-7
reach&tilt B11-6 K1+12 L3+3 L5-3 L8-6 X1-4
reach&tummy W10+7
reach&up SH1-4 SH2+5 SH4-4 K1-6 L3+5 D3-3
reach&upright N1-4 N5-4 B10+9 A4-4 L8-4
reach&waist K1-3 K2-4 K6+4 W3-5 W4+5
reach&whole K1-3 X2-5 X3+5
realCloth N4-3 SH8-4 B6-4 B9-3 A5-6 K2-4 D4-4 X4+24
realCloth&tight X4+6
realCloth&toile X4+16
realCloth&wing X4+4
rise N2-3 N3-5 N8+4 B2+12 K3+9 W1+5 W9+8 W11-4 D3+11
rise&roundBack K3+3 D3-3
rise&sCurve L8+3
rise&seam N4+4
rise&seat B2-4 W9+7 D3-5
rise&short B2-6 K3-4 W1+4 D3-4 X3-3
rise&shoulder N4+4 N5-3 SH3-8 SH5-4 K3-4 L1+6 L2-4 D3-5 L8-4 D1-4 D2-4
rise&shoulderSeam N4+4 N6+10 SH2-5 SH3-5 SH4-9 SH5-5 SH6-7 SH7-3 B2-5 K3-4 W1-3 D3-5 L9-4
rise&show B2+4 W10-4
rise&side D3+7
rise&sideSeam D3+4
rise&sit N2+4 N8-3 B2-4
rise&skin B8+5 A3-5
rise&skirt N8-3 W9+7 D3-3
rise&sleeve SH3-6 SH4+7 SH5-3 B2-7 K3-6 W1-6 W9-4 L2-5 L3-9 L4-8 L5-4 D3+4 L6-5 L7-3 L8+9 L9-7 D1-7 D2-5 D5-3 D6-6
rise&sleeveCap L2-3
rise&sleeveHem B2-8 K3-4 L1+5 L9+7 D6-6 D7-8 D8-7
rise&slide K3-4 W9+6
rise&smallBust W1-4
rise&stickUp W10-3
rise&tight SH4+3 B1-3 B2+4 D3+7 D2-5
rise&tummy W10+4
rise&underBust N1-6 N2-7 N8-6 B2+7 B5-4 B13-6 B14-3 K3-5 W10-3 D3-4
rise&underarm A1-3 L9+6
rise&up N5+4 N7-3
rise&upperBack N4+4 K3-4
rise&waist B2+3 W1+4 W2-3 W5-5
rise&walk N7-3 N8-4 W9+7 D3-3
rise&wavy W11-3 D3+5
rise&whole B2-4 D3+8
rise&wornOn N5+4 N8-3 W10-3
roundBack N1-8 N2-11 N3-6 N5-10 N6-6 N7-7 N8-6 SH1-6 SH2-6 SH3-10 SH4-8 SH5-6 SH6-5 SH8-6 B1-5 B2-5 B3-5 B4-7 B5-5 B6-5 B7-5 B8-4 B9-5 B10-5 B11-5 B12-5 B13-5 B14-5 B15-6 A1-5 A2-4 A3-5 A4-8 A5-6 K1-7 K2-6 K3+22 K4-6 K5-8 K6-6 K7+6 W1-5 W2-6 W3-5 W4-4 W5-5 W6-5 W7-5 W8-5 W9-6 W10-5 W11-5 W12-5 L1-5 L2-5 L4-5 L5-5 D3-6 L6-5 L7-5 L8-5 L9-5 D1-6 D2-6 D4-5 D5-6 D6-5 D7-5 D8-5 X1-5 X2-5 X3-5 X4-5
roundBack&sleeve L3+5
roundBack&strain L3+4
roundBack&tight K3+3
roundBack&up K3+5 K5-3 W2-3 X3-3
roundBack&upperBack A4-4 K3+3 K5-4
sCurve N1-4 SH7+4 W6-7 W7-7 W8+17 L9-9 D7-4 D8+4
sCurve&sideSeam W6-7 W7-7 W8+19
sCurve&sleeveSeam L4+4
sCurve&slide N7+4 W8-4 X1+4
sCurve&small SH7+10 A1-7 W8-3 L7-5
sCurve&spine N3-3 K7+7 W8-4
sCurve&waist K6+4
sag N7+3 SH8+4 B2-4 B13-4 B14+4 A2+5 K2-3 W2-3 W5+8 W11+4 L1-3
sag&seat W11+7
sag&shoulder SH3+4 B15+3
sag&shoulderSeam N5-3 N6-6 N7-4 SH1-5 SH2+7 SH4-6 SH5-8 SH6-8 SH7+4 SH8-5 B5-3 B14-4 A2-4 K5-3 W5-6 W11-4 L7-3
sag&show A5-4 W5-3 D6-6
sag&side SH8-5 B8-6 A2+7 W11+7
sag&sideSeam SH7-7 SH8-6 B9-3 B14-4 A2-4 K5-4 W2-3 W5-6 W6-7 W7-7 W8-6 W11+10
sag&slant SH8-6 A2+3 D4-3
sag&sleeve N7-3 SH3+8 SH5-4 B14-3 A2-4 W5-6 W11-3 L1-7 L2-7 L3-7 L4-6 L5-4 L6-5 L8-4 L9-6 D1-6 D2-4 D5-5 D6-5 D8-4
sag&sleeveCap N7-4 W5-3 L1-5 L6-5 D5+4
sag&sleeveHem N7-4 SH3-5 B5-3 A2-3 K5-4 W5-4 W11-6 L1-4 L2-3 L9+5 D6-5 D7-8
sag&slide N7+5 B14-3 W5-5 X1-3
sag&throat N2-6 N7+6 K1-3 K5-4
sag&tight B1-3 B9+3
sag&tummy B5-4 B7-3 W1-4 W2-4 W3-4 W5+3
sag&twist L9-5 D8+4
sag&underBust SH8-4 B5-4 B13-4 B14+10 A2-4 W5-6
sag&underarm SH8-8 A1-6 A2+9 W5-3
sag&upperBack A4-10 K1-4 K3-3 K5+10
sag&upperChest B9+5
sag&waist N3-4 N8-3 W3-5 W5+8
sag&whole SH8-3 W1+5 W2-5 W5-5 X1-3 X2-6 X3+5
sag&wing SH8+7 A2-3
seam N1-3 N2-4 N5-4 N7-4 N8-7 SH1-7 SH3-6 SH4+3 SH5+7 SH6+8 SH7+4 B1-4 B2-3 B4-4 B8-3 B11-3 A2-4 A4-5 A5-5 K1-6 K3-4 K5-3 W2-7 W3-4 W5-6 W8-3 L1-3 L2-3 L3-4 D2-4 D4-3 D5-3 D7-3 X1+4 X2+5
seam&short SH2-4 SH4+5 SH5-4 W1-5
seam&shoulder N4+4 SH4-3
seam&shoulderSeam N4+4 SH4-3 SH5-3
seam&shoulderTip SH1-11 SH4+7 SH5+8 SH6-7 D2-4
seam&show SH6+6 B2-5 B8-4 B14-4 D6-4
seam&slant SH8-3 A1-4 A2-3 W6+4 W7+4 X1-3
seam&sleeve SH4-4 L3-3 L7+4
seam&sleeveCap L1-6 L2-8 L6+4 L7+7 D2-5 X2-4
seam&sleeveSeam SH4-4 L3-3 L7+4
seam&slide N5-5 N7-3 N8-8 SH6+5 A5-5 X1-3
seam&smallBust N6-3 N7-4 SH2-5 SH3+4 SH4-6 SH6+5 SH7-5 B1-4 B3-6 A5-5 W2-3 W3-5 W6-4 W7-4
seam&strain SH1-4 SH4-4 B1-4 B15+4 K1-4
seam&swing SH6+3 W7-3
seam&tight SH4+4 SH5-6 SH6-4 SH7-3 B1-4 B6-3 A1-6 K1-5 L1-4 L2-4 L3-4 L6-4 L7+8 D7-5 X1-3 X2+5
seam&tilt N7-4 N8-5 SH6-7 SH8-4 A1-5 A2-4 K1-5 W6+6 W7+6 L4-5 L9-4 D5-3 X2-3
seam&tip SH4+3 SH6-3
seam&twist N6-3 SH4-4 SH5-5 SH6-5 SH7-4 W6-4 W7-4 W8-3 W11-3 L3-4 L4+5 L6-3 L7-4 D8-4 X1+12
seam&underarm SH5-5 SH6-4 SH7-4 SH8-4 A1+4 A2-6 A5-4 W6+3 W7+3 L1-3 L9-3 D4-8 X1-4
seam&upperBack N1-5 N6+3 N7-3 SH4-4 SH5+6 SH6-5 SH7-4 B1-4 B15+4 A3-4 A4-8 A5-3 K1-5 K3-6 K5-6
seam&waist SH6-3 W1+6 W2-4 W5-3 X2-4 X3-3
seam&wavy L2-4 L6+6 L7-7
seam&whole W1+5 W2-5 W5-3 X2-4 X3-3
seam&wing N6+4
seat W7+4 W9+11
seat&shoulder K1+3
seat&shoulderSeam N7+4
seat&shoulderTip SH2-4 SH5+11
seat&sideSeam W6+3 W7+8 W9-4 W11-3
seat&sit N2-3 K2+4
seat&slant W9-3 W11+3
seat&sleeve K1+3 L4-6
seat&slide SH5-5
seat&small W9+5 X2-4
seat&strain W7-3 W9+12 X2-4
seat&swing W6-6 W7+8
seat&tight W7-3 W9+8 W11-3 X2-4
seat&tip B7-4 W12+4
seat&underBust A2+4
seat&underarm A1-3 A2+4
seat&uneven W9-9 W11+5 L9-4
seat&waistDart W12+4
seat&whole SH5-3 D5+6
seat&wornOn N8+4 SH5-5
short N1-3 N5-4 N6-3 N7-3 SH3-8 SH4+7 SH5-4 SH6-5 B2+8 B5-3 B14-4 A1-4 K1-3 K3+6 K4-3 K5-4 W1+11 W2-5 L1+6 L2-6 D3-7 L6-5 L8-4 D2+3 D5-4 D7-3
short&shoulder N5-6 N6-4 SH2-4 SH3-10 SH4+12 SH8-4 B2-9 K3-6 L1-6 L9-3 D2-4
short&shoulderTip SH2-4 SH3-4 SH4+6 SH7-3 W1-3
short&side B2-3 A1-5 A2-3 W1-3 L1-5 L9+5 D6-4
short&sleeve SH4-5 B2-4 A1-7 K3-3 W1-5 L4-5 L7-5 L9+7 D1-4 D6-3 D7-3
short&sleeveCap SH4-7 B2-6 K3-5 W1-8 L1+12 L2-14 L6-11 L7+5 L9-7 D2-5
short&sleeveHem B2-6 W1-3 L9+7 D6-4 D7-7 D8-5
short&smallBust SH3-5 SH4+4 W1-5
short&tight L1-3 L3+3
short&tummy B2-8 W10+6
short&underarm A1-4 A2-3 W1-3 L1-4 L9+6 D4-3
short&waist SH4-6 B2-6 K3-5 W1+7 W2-5 W3-7 W4-6
short&whole B2-5 K3-4 W1+4 D3-4 X2-4 X3-4
shortWaisted N1-7 N2-7 N3-7 N4-7 N5-7 N6-7 N7-7 N8-7 SH1-7 SH2-7 SH3-6 SH4-8 SH5-7 SH6-7 SH7-7 SH8-7 B1-8 B2-8 B3-7 B4-8 B5-7 B6-7 B7-7 B8-7 B9-7 B10-7 B11-7 B12-7 B13-7 B14-8 B15+4 A1-6 A2-7 A3-7 A4-6 A5-7 K1-6 K2-7 K3-8 K4-7 K5-7 K6-7 K7-7 W1+10 W2+10 W3-11 W4-10 W5-7 W6-7 W7-7 W8-7 W9-6 W10-7 W11-7 W12-8 L1-7 L2-7 L3-6 L4-7 L5-7 D3-7 L6-7 L7-8 L8-8 L9-8 D1-7 D2-8 D4-7 D5-7 D6-7 D7-8 D8-7 X1-8 X2-10 X3-9 X4-7
shortWaisted&tight B1-6 B2-4 B15+7
shortWaisted&waist W1-7 W2+11 W3-10 W4-9 W5-5
shoulder N5+9 N7-4 SH1-8 SH2-7 SH3+11 SH4+8 SH6-6 A1-4 K7-3 W1-3 D1+6
shoulder&shoulderSeam N4+3 SH3+7 SH4-6
shoulder&shoulderTip N6+3 SH3-3 SH4-4
shoulder&show N5+4
shoulder&side SH3-3
shoulder&sit N2-4 N6+3 SH3-4 SH4-4
shoulder&sleeve SH3-5 SH5+3 L1+5 L2-5 L3-4 L4-3 D2-4
shoulder&sleeveCap SH3-4 SH4+6 L1-5 L2-4 L7-4 D2-4
shoulder&sleeveHem SH4-6 B15-5 L1-4 D2+11 D7-4
shoulder&slide N5+14 N6-3 N7-8 N8-8 SH3-3 SH4-10 SH5-6 SH6-4 SH7-4 D1-3 D2-3
shoulder&small SH2-5 SH3-7 SH4+6 X2-5
shoulder&smallBust N5-5 SH3+4 SH4+4 SH6-4 B3-4 W1-3 W2-3 L1-3
shoulder&stickOut N5-3 N6-3 SH1-3 SH3+5 SH4-8
shoulder&stickUp N5-4 SH1-7 SH3-9 SH4-7 SH7-4 SH8-4 L2-8 D1+9
shoulder&strain SH3-5 SH4-7 B1-5 B15+5 L3-3 D2+8
shoulder&tight SH3-5 SH4+3 B1-4 B2-4 B15+3 D2+5 D7-4
shoulder&tilt SH5+3
shoulder&tip N6+3 SH3-3 SH4-4
shoulder&uneven N5-6 SH2-4 SH3-9 SH4-8 SH5-6 SH6-3 SH7-4 SH8+11 W11-4 L9-6 D1-4 D5-3 X1-7
shoulder&up N7-4 N8-3 SH3-5 SH5-3 SH8-3 B5-3 K3-4 W1-3 L2+6 D3-5 D1-7 D2-4
shoulder&waist SH3-6 SH4-7 W2+4
shoulder&whole N5-6 N6-3 N7-4 N8-4 SH1-3 SH2-4 SH3-7 SH4-7 SH5-4 SH6-5 SH7-5 SH8-4 W1-3 L2-6 L5+7 D3+9 L6-3 D2-5 X1-4 X2-6 X3-5
shoulder&wide N5-8 SH3+13 SH4-8 B10-4 A4-3
shoulder&wing N5-8 N6-5 SH1-7 SH2-5 SH3-9 SH4-9 SH5-5 SH6-5 SH7-4 SH8-8 B15-4 A3-4 K3-4 W1-4 L1-4 L2+6 L5-3 D3-5 D1+8 D2-3 D4-4 X4-3
shoulderBack N1-3 N2-4 N3-4 N4-3 N5+3 N6-4 N7-5 N8-5 SH1-5 SH2-5 SH3-5 SH4-5 SH5-5 SH6-4 SH7-4 SH8-6 B1-3 B2-5 B3-3 B4-3 B5-3 B6-3 B7-5 B8-3 B9-4 B10-4 B11+11 B12-4 B13-3 B14-4 B15-4 A1-5 A2-3 A3-4 K1-10 K2-4 K3-6 K4-5 K5-4 K6-5 K7-4 W1-3 W3-4 W5-4 W6-4 W7-6 W8-4 W9-4 W10-3 W11-4 L1-4 L2-3 L3-4 L4-4 L5-8 D3-7 L6-4 L7-3 L8-5 L9-4 D1-3 D2-4 D4-5 D5-4 D7-3 X1-6 X2-4 X3-3 X4-4
shoulderBack&tight B11+3
shoulderBack&tilt N2-4 N3-3 N5-4 N8-4 SH1-4 SH2-5 SH3-3 SH4-4 SH5-4 SH6-3 SH7-4 SH8-6 B2-3 B3-3 B7-5 B11+11 B12-3 B15-3 A3-4 A4-6 K1-9 K2-4 K3-5 K4-4 K5-4 K6-4 K7-3 W5-4 W6-4 W7-5 W8-3 W9-3 W11-4 L3-3 L4-3 L5-7 D3-7 L6-4 L8-5 L9-4 D2-3 D4-5 D5-3 X1-5
shoulderLength N1-4 N2-6 N3-4 N4-4 N5-7 N6-7 N7-5 N8-5 SH1-10 SH2-9 SH3+5 SH4+10 SH5-10 SH6-10 SH8-7 B1-5 B2-6 B3-4 B4-5 B5-5 B6-5 B7-6 B8-7 B9-5 B10-5 B11-6 B12-5 B13-5 B14-5 B15-6 A1-8 A2-7 A3-5 A4-4 A5-5 K1-6 K2-4 K3-5 K4-6 K5-5 K6-5 K7-4 W1-5 W2-5 W3-6 W4-4 W5-5 W6-5 W7-4 W8-5 W9-6 W10-5 W11-4 W12-5 L1-6 L2-6 L3-5 L4-4 L5-6 D3-4 L6-5 L7-9 L8-5 L9-6 D1-5 D2-5 D4-5 D5-5 D6-4 D7-5 D8-5 X1-4 X2-8 X3-4 X4-5
shoulderLength&small SH1-3 SH2-6 SH3-9 SH4+8 SH7-4 B11-3 K1-3 W3-3 D2-3 X2-7
shoulderSeam N5-4 N6+6 SH1-5 SH3+4 SH5+8 SH6+14
shoulderSeam&shoulderTip N6-5 N7-4 SH1+4 SH2-9 SH3-7 SH4-4 SH5+5 SH7-5
shoulderSeam&show SH3-5 SH6+8
shoulderSeam&side SH3-4
shoulderSeam&slant SH3-4 SH4-3 SH5+4 SH6-4 SH7+5 A2-4
shoulderSeam&sleeve N4-3 SH3-4 SH4-5 L1-4 L2+5 L3-5 L4-7 L6+5 L7-3 D1-5 D2-5 D5-4 D6-3 D8-4
shoulderSeam&slide N5-6 N7+5 N8-9 SH5+4 SH6+4
shoulderSeam&small SH2-4 SH5-3 SH6-4 A1-5 L7-3 X2-3
shoulderSeam&stickOut N6-8 SH1-5 SH2-4 SH3+10 SH4-6 SH5-6 SH6-10 SH7+6 B8-4 D1-7
shoulderSeam&stickUp N6+6 SH3-3 SH5-4 SH6-4
shoulderSeam&strain SH4+4 SH7-3 B1-4 B15+6 A1-5
shoulderSeam&swing N5-4 N7-7 N8+5 SH6-5 W7-5 L4-3
shoulderSeam&tight B1-4 B15+6
shoulderSeam&tilt N7-3 N8-7 SH5+6 SH6+5
shoulderSeam&tip N6-3 N7-3 N8-6 SH2-5 SH3-7 SH4+6 SH5+6
shoulderSeam&wornOn N5-4 N7+14 N8-3 SH3-5 SH5-5 SH6-5
shoulderTip N6-7 N7-4 SH1+14 SH2+15 SH4+5 SH5+3 SH6-5 SH7+6 D1-4 D2+4
shoulderTip&show D2+5
shoulderTip&sit SH1-3 SH2-6 SH5+4 SH6-5 SH7-5
shoulderTip&slant D2-4
shoulderTip&sleeve SH2-13 SH4-7 SH5-3 SH7-3 L1+5 L3-6 D2+6
shoulderTip&sleeveHem SH2-5 SH4-5 D2+5 D7-4 D8-3
shoulderTip&sleeveSeam SH1-5 SH2-6 SH3+6 SH4+6 SH5-4 L1-4 L2-3 L4-7 L6-4 L7-4 D2-7
shoulderTip&slide N7-4
shoulderTip&small SH3-5 SH7-3 D1-4 X2-7
shoulderTip&smallBust SH2-5 SH3+6 SH4-5 SH5-4 SH6-5 SH7-3
shoulderTip&stickUp N6-5 SH1+10 SH2-10 SH3-5 SH5-4 SH6-4 SH7-6 D1-4
shoulderTip&strain SH1-8 SH2+9 SH3-5 D2+5
shoulderTip&swing N5-3 SH2-3 SH4-5 W7-3
shoulderTip&tight N2-5 SH1-3 SH2+10 SH4-11 SH5-4 X2-3
shoulderTip&tip SH3-3 SH4-3 SH5-3
shoulderTip&underarm SH1-3 SH2-3 SH4-5 L1+6 D2-8
shoulderTip&upperChest SH2+10 SH4-5 B9-9 B10-3 B11-5 D2-4
shoulderTip&wing SH2-4 D1-4
show N2-3 N4-5 N5+7 SH3-4 SH5-4 SH6+5 SH8-3 B5-4 B8+10 A1-3 A2+3 W10-7 L1-3 L3-6 L4-4 D3-5 L6-3 L9-4 D1-5 D2-4 D4-4 D5-4 D6+21 D7-4 D8-4
show&side B8+9 L7-3 L9-5 D7-3 D8-3
show&sleeve B8-5 L1-6 L2-4 L3-8 L4-9 L5-3 L6-7 L8-4 L9-4 D1-6 D2-3 D5-3 D6+22 D7-3
show&sleeveCap L6+3 D2+5
show&sleeveHem B8-7 L9-8 D6+9 D7-8 D8-3
show&stickUp B8-4 B12+4
show&strain K1-3 D6-3
show&strap N5+14 SH6-4 B8-6 A2-4 D6-8
show&tummy B2+5 W10-4
show&underarm B8-11 A1-8 A2+11 D4-8 D6-4
show&up L1-4 D6+6
show&whole N1+4 B8-4 D6+4 D7-4 X2-3 X3-3
show&wornOn B12-3 D6-4
side N1-3 B4-5 B5-3 B8+5 K7-5 W6-4 L1-5 D3+6
side&sit SH6+3
side&slant SH1+3 B2+4
side&sleeve SH8-9 A1-5 L1-5 L3-3 L4+6 D3+3 L7-5 L9+4 D2-3 D7-3
side&sleeveHem SH8-6 B8-4 D6+5 D7-5 D8-5
side&strain K4+3
side&strap N5+4
side&tight B2+6 B15-4 W3-3
side&tilt B2+3
side&underarm A1-6 A2+4 L1-4 L9+4 D4-4
side&waist B2+5 W3-4
side&wide N5+3
side&widerHips K4+3
sideSeam N7-4 N8-5 W6+14 W7+13 W8+16 W11+4
sideSeam&slant W6+4
sideSeam&sleeve W6-6 W7-6 W8-7 L1-4 L3-5 L4+8 D3+4 L6-4 L9-3 D1-4 D2-3 D6-3
sideSeam&slide N7-9 N8-8 W6+7 W7+8 W8-6
sideSeam&strain B1+8 B15-7 W6-4
sideSeam&swing N8-6 W6+9 W7+10
sideSeam&tight W8+6
sideSeam&tilt N8-4 W6+8 W7+10 W8-7
sideSeam&tip N8-5 W6+4
sideSeam&tummy B1-3 W6+3 W10-3
sideSeam&uneven W8+5 W11-5
sideSeam&wavy W6-4 W7-3 W8+8 L5-4 D3-4 D8-4
sit N1-5 N2+8 N4-4 N8-5 SH1-3 SH2-4 SH3-3 SH7-5 B3-3 B4-6 B13-3 B15-3 A4-5 K1-5 K3-7 K4-3 K5-4 K7-4 W1+3 W3-6 W4-6 W12-5 L2-3
sit&strain W9+6
sit&throat N2+4
sit&tight W1-3 W3+5 W9+4
sit&underBust B5+4 B6-3 B13-5 W1+5 W2-6 W3-4 W4-3
sit&upperChest B5+6
sit&waist N2-6 B2-4 B5-4 B13-3 B14-4 A2-3 W1+6 W2+6 W3-5 W4-9 W7-4 W12-7
sit&widerHips W9+3
skin N6-3 N8-4 SH3-4 B8+4 A3-6 K1-3 K7-3 L1-6 L2-5 L3+7 L4-6 L5-4 L6-5 L7-4 L8-4 L9-5 D1-7 D2-4 D5-4 D6-6 D8-3
skin&wing B8+5 A3-5
skirt N8-3 B2-4 W9+7 W10+3 D3-3 X1-3
skirt&slide N7-3 N8-3 W9+6 D3-3
skirt&walk N7-3 N8-3 W9+6 D3-3
skirt&widerHips W9+3
slant SH1+4 SH2-3 B11-6 B15+5 K1-5 K4+9 L1+8 D4-4
slant&sleeve SH3-4 L1+10 L2-3 L3-6 L4+3 L6-6 D1-3 D2-4 D5-5 D6-3
slant&sleeveCap K4-3 L1+14 L2-5 L6-3 L7-5 D2-3
slant&sleeveHem L1-3 L9+5 D6-4 D7-7 D8-7
slant&strain B11-6 B15+5 K1-7 K4+8 L1+7
slant&tight B1-5 B2+8 B9-3 B11-4 A1+3 A5-3 K4-3 D2-3
slant&tilt SH8+5 A1-4 W5-3 W11+3 D4-4
slant&tip SH1+3 SH5+5 A2-3
slant&underarm SH1+4 SH8+4 A2-4 K4-3 L1+3 D4-7
slant&upperChest B9-7 B11-16 B15+17 K4-6
slant&vNeck N1+5 N2-3 N6-4 SH3-3 SH7+5 A2-3
slant&waist B2+3
sleeve SH8-4 L1+4 L3+10 L4+12 D3-3 L6+3 L8+3 D1+5 D6+4 D8-4
sleeve&sleeveCap SH5-3 W3-4 L1+5 L3-9 L4-5 D3-3 L8-4 D2-5 D6-3 D7-3
sleeve&sleeveHem A1-4 L3-6 D7+8 D8-5
sleeve&sleeveSeam SH4-4 L3-3 L6+3
sleeve&slide N8-3
sleeve&small N2-3 A1-4 A5-4 L3-6 L4-4 L6-4 L7+6 L8+4 D1-4 D2-3 D7+4 X2-7
sleeve&stickOut L2-4 L3-4 L4-5 L6-3 D1+16 D6-5
sleeve&stickUp N6-4 SH1-4 SH3-4 SH4-3 L1-6 L2+8 L3-5 L4-6 L5-4 L6-8 L9-4 D2-4 D6-6
sleeve&strain SH2-9 SH3-5 SH4-6 A1-4 L1+5 L3+10 L4-7 L8+3 D1-4 D2+4 D7-4
sleeve&swing N7-3 N8-9 SH3-3 SH5-6 K1+4 W6-4 W7-5 L3-5 L4+9 L6-3 D1-4 D6-4
sleeve&tight SH2-5 B1-4 K1-4 L2-3 L3+15 L4-7 L6-6 L8+4 D1-5 D2-6 D6-4 D7-3 X2-5
sleeve&tilt L3+3 D3-5 L8-4 L9-6 D1-5 X1-4
sleeve&twist L1-3 L3-6 L4+15 L6-3 L9-5 D1-4 D8-4 X1-12
sleeve&underarm SH1-3 SH4-5 A2-3 A5+6 L1+4 L3-3 L4-3 L6-3 L9+4 D2-5 D4-7 D5-7
sleeve&uneven W11-3 L3-4 L4-9 L6-5 L9+7 D5+7 D8-3
sleeve&up SH4-3 K1-6 D3-4 L9-3 D6+6
sleeve&upperArm SH3-3 L1-5 L2-5 L3+5 L4-12 L6+7 L7-4 L8-5 D1-7 D2+3 D6-9 D7-4
sleeve&upperBack A4+3
sleeve&upperChest B10+3 A4-5
sleeve&upright A4+4 L3-4 L4-3 D2+5 D4+4 X2-3
sleeve&waist B10-3 A4-3 W2-3 W3-4 W4-5 L1-5 L5+4 D1-3 D2-4 D4+6
sleeve&wavy SH3-4 SH5-3 SH6-5 L2-3 L3-3 L6+6 L7-3 D2-3 D8-4
sleeve&whole A5-4 L1-4 L3-5 L4-9 L6-4 D2+6 D5+9 X2-7 X3-6
sleeve&wide B10+4 B11-4
sleeve&wing SH3-3 A3-3 L1-7 L2-9 L3-10 L4-10 L5-4 L6-8 L7-3 L8-4 L9-5 D1+15 D2-4 D4-3 D5-5 D6-8 D7-3 D8-3
sleeve&wrist L8+3
sleeveCap L1+12 L2+16 L3-6 L4-4 D3-4 L6+13 L7+10 L9-5 D6-3 D7-4 D8-5
sleeveCap&sleeveHem L1+4
sleeveCap&slide N5-6 N7+4 N8-6 SH3+6 W7-4 L1-8 L2-8 L4-6 L6-7 L7-7 D1-3 D2-4 D5-3
sleeveCap&small A1-3 L6-7 L7+9
sleeveCap&smallBust SH3-3 L1+3 L2-4 L7-3
sleeveCap&smooth L6+5
sleeveCap&stickOut L2-5 D1+5
sleeveCap&stickUp N6-3 L1-7 L2+9 L6-8 L7-6 D1-3 D5-4 D6-3
sleeveCap&strain A1-4 K4-4 L1+5 L2-7 L3-4 L6-9 L7+5 D2+3 D7-3
sleeveCap&swing D5+4
sleeveCap&tight SH4-3 B1-3 A1-4 K1-3 L1-11 L2-12 L3-9 L6-12 L7+16 L8-5 D1-3 D2+4 D7-8 X2-6
sleeveCap&tilt L1+6 L5-4
sleeveCap&underarm SH1-3 A1-5 L1+11 L2-6 L7-5 D2-5 D4+5
sleeveCap&wavy L1-8 L6+7 L7-13 D1-4 D2-3
sleeveCap&whole D5+4
sleeveCap&wing D1+3
sleeveHem SH2-3 B2-3 K2-3 W11-4 L2-4 L3-7 L4-5 D3-3 L6-4 L7-4 L9+14 D4-3 D5-3 D6+11 D7+16 D8+14
sleeveHem&small L3-4 L7-4 L9-7 D2-3 D6-5 D7+12 D8-8 X2-8
sleeveHem&strain N2-3 SH2-4 SH4-3 B1-4 B11-3 B15-4 K1-4 K4-4 W3-4 L1-5 L3-8 L7-4 L8-4 L9-11 D6-8 D8+13 X2-4
sleeveHem&tight K1-3 L3-12 L7-4 L8-4 L9-9 D2-6 D6-6 D7+14 D8-12 X2-4
sleeveHem&tilt K1-4 L1-3 L4-6 L9+10 D6-7 D8-11
sleeveHem&twist L4-5 L9-8 D8+9 X1-4
sleeveHem&underarm A1-7 A2-7 L1-6 L7-3 L9+7 D4-6 D6+5 D7-5 D8-5 X3-4
sleeveHem&uneven W11-4 L4-3 L9+12 D5-5 D6-6 D7-9 X1-5
sleeveHem&upperArm L3-7 L9-3 D2-4 D7+7 D8-3
sleeveHem&wavy L6-7 L9-10 D6-10 D7-12 D8+19
sleeveHem&wide N5-5 SH3-5 B6-5 B8-6 B10-6 B13-4 A4-6 W4-4 L2-5 L9-9 D1-3 D6+10 D7-10 D8-10 X3-5
sleeveSeam N8-3 SH2-3 SH3+8 SH4+4 SH5-4 SH6-3 L1-5 L2-5 L3-5 L4+10 L7+6 L8-8 L9-5 D1-4 D2-6 D5-4 D6-4 D7-3 D8-4 X1-5 X2-4
sleeveSeam&slide L4+4
sleeveSeam&swing L4+3
sleeveSeam&twist SH3-4 L4+12 L7-4 X1-7
sleeveSeam&upperArm W6-3 L3-4 L4+7 L6-4
sleeveSeam&wavy L6-3 L7+5
sleeveless N1-3 SH1-3 SH5-4 B12-4 A3+4 A4-3 A5-4
sleeveless&stickOut B8+7
slide N2-4 N5+7 N7+10 N8+9 SH4-3 K3-4 L2-3
slide&smallBust N7-4 SH5+3 W7-4
slide&squareShoulders N8-3 SH2+5 SH5-3 X1-3
slide&swing N8+4
slide&throat N7+6 N8-4
slide&tight N2-3 N6+3
slide&tilt N7-4 B7+3 X1-4
slide&tip N7-4 B7+4 X1-3
slide&twist N5-6 N7-6 N8-3 L4+7
slide&up N5+4 N6+3 N8-4
slide&upperBack N7+5
slide&waist N8-4 W3-3
slide&walk N5-4 N8-5 SH5-5 W9+6 L4-6 D3-3 X1+4
slide&whole N7+7 N8+5 W7-3 D5-6 X1-4 X3-4
slide&wide B13+3
slide&wornOn N5+5 N8+8 SH3-5 SH5-11 SH6-3 SH8-4 D5-3
slopingShoulders N1-9 N2-9 N3-8 N4-8 N5-11 N6-9 N7-8 N8-8 SH1+20 SH2+3 SH3+9 SH4-12 SH5-12 SH6-10 SH7-8 SH8-13 B1-9 B2-9 B3-11 B4-9 B5-10 B6-10 B7-8 B8-9 B9-9 B10-9 B11-8 B12-9 B13-9 B14-9 B15-9 A1-9 A2-8 A3-9 A4-9 A5-8 K1-9 K2-9 K3-9 K4-11 K5-9 K6-8 K7-9 W1-9 W2-9 W3-9 W4-9 W5-10 W6-9 W7-9 W8-8 W9-9 W10-8 W11-9 W12-8 L1-9 L2-9 L3-7 L4-8 L5-9 D3-9 L6-8 L7-11 L8-9 L9-9 D1-10 D2-9 D4-7 D5-10 D6-8 D7-8 D8-9 X1-8 X2-9 X3-10 X4-9
slopingShoulders&underarm SH1+5 A5-3 D4-5
small N1-3 N2+4 N5-4 N7-5 N8-4 SH2-5 SH3-5 SH4+4 SH5-4 SH6-4 SH8-3 B1+4 B3-4 B4-4 B5-3 B6-3 B8-3 B9-4 B10-3 B12-7 B14-3 B15-4 A2-4 A3-3 A4-4 A5-4 K2-3 K3-4 K4-4 K5-3 K7-5 W1-4 W2-3 W4-4 W8-3 W12-3 L1-3 L2-3 L3-5 L4-4 L5-3 D3-3 L8-4 L9-3 D2-5 D4-3 D5-3 D6-3 D8-4 X1-3 X2+16 X3-6 X4+5
small&stickUp N2-4 N6+4
small&strain SH2-5 SH3-4 SH4+6 SH7-4 A1-5 X2-4
small&tight B1+8 B3-4 X2-4
small&tip SH4-4 SH7+4 X2-3
small&tummy B7+4 W10+5 X2-5
small&underarm A1+8 A2-5 D4-3 X2-3
small&upperArm SH4-3 SH7-4 A1-8 L3+4 L7+4 D2-4 D7-6 X2-6
small&upperBack A4-8 K1+10 K3-6 K5-5 X2-8
small&upperChest B9-7 B10-4 B11+9 B15-5 X2-7
small&waist W1-7 W2-5 W3+11 W4-10 W5-3 X2-9
small&washed N2-6 N3-5 N4-3 SH2-3 SH4-5 SH7-3 B1-6 B6-3 B7-5 B11-5 B13-3 B15-3 A1-5 K1-5 K4-3 K6-3 K7-4 W3-5 W9-4 W10-3 L3-4 L5-4 D3-4 L7-4 L8-4 D1-3 D2-3 D7-5 X2-9 X4+9
small&whole N2-4 B11-3 A1-4 K1-3 W3-4 L6+3 L7-9 D7-4 X1-4 X2+9 X3-10
small&widerHips W9+4 X2-4
small&wing N2-4 SH2-4 B1-4 B11-3 K1-5 W3-3 D1+5 D4-4 D7-3 X2-6 X4-4
smallBust N1-4 N2-3 SH2-3 SH7-3 B2-3 B3+13 B4-4 B5-3 B7-4 B15-3 W1-4 W5-5
smallBust&tip N7-3 SH5+3 W7-4
smallBust&upperArm SH3-4 B1-3 B3-4 L1-3 L3+5 L4-4 L6-4
smallBust&upperBack K1-3 K3-4 K5-3 K6-4 W1+5 W2-4 W3-4
smallBust&waist SH3-3 SH6-5 B1-4 B2-4 B3-7 K3-4 K6-5 W3+5 W5-5 W12-4 L3-4
smallBust&widerHips W9+3
smooth B2-5 B5-4 B7+4 B14+5 K2-7 K6-4 L7-3
smooth&tip B5-4 B7+4
spine N5-3 N6-3 SH7-3 K7+5 W8-5 X1-5
spine&strain K7+4
squareShoulders N1-7 N2-7 N3-7 N4-7 N5-8 N6-9 N7-7 N8-6 SH1-12 SH2+21 SH3-11 SH4-11 SH5-8 SH6-11 SH7-9 SH8-14 B1-7 B2-7 B3-7 B4-7 B5-8 B6-7 B7-8 B8-8 B9-7 B10-8 B11-7 B12-8 B13-8 B14-7 B15-8 A1-7 A2-7 A3-8 A4-7 A5-6 K1-6 K2-7 K3-8 K4-9 K5-8 K6-7 K7-7 W1-7 W2-7 W3-7 W4-7 W5-7 W6-7 W7-7 W8-8 W9-7 W10-7 W11-7 W12-7 L1-8 L2-7 L3-7 L4-7 L5-7 D3-7 L6-7 L7-8 L8-7 L9-8 D1-8 D2-8 D4-7 D5-7 D6-7 D7-7 D8-7 X1-6 X2-8 X4-7
squareShoulders&strain SH2+5 K4-4 X2-3
squareShoulders&tilt N8-4 SH2+5 SH5-4 X1-3
squareShoulders&tip N8-3 SH1-3 SH2+7 SH5-3 K4-4
stickOut N6-4 SH1-4 SH3+4 SH5-5 SH6-3 SH7+8 B2-3 B6-3 A1-3 A2-4 W5-3 W10+8 W12+5 L2-3 D1+11
stickOut&tight B1-3 B4+7 B5-5 B6-3
stickOut&tip W12+3
stickOut&tummy W10+3
stickOut&waist B2-6 B14-4 W5-6 W10+9 W12-5
stickOut&waistDart W12+5
stickOut&widerHips W9-3 W12+5
stickUp N2-5 N5-4 N6+5 SH1+6 SH2-5 SH3-10 SH4-4 SH5-4 B8-3 K2-3 W10-3 L1-4 L2+10 L6-7 D1+5 D5-3 D6-4
stickUp&wornOn W10-3
stiff N1-3 N2-4 N3-4 N4-3 N6-3 SH1-5 SH4-4 SH5-3 SH6-3 SH8-4 B1-6 B7-4 B11-5 A1-3 A3-6 A4-4 K1+6 K3-4 K4-5 K5-8 W3-4 W9-3 W10-4 W12-3 L1-4 L2-4 L3-4 D3-3 L6-3 L8-3 D1+6 D2-3 D4-5 D5-4 D6-3 D7-4 X2-7 X4-5
strain N4-3 SH4-4 SH7-4 B6-4 B15+6 K4+6 W3+5 L3+3 L6-4 L9-4 D2+4 D7-4 D8+4 X2+3
strain&tight B15+3 W8-4
strain&tilt B15+3 L1+4 L3-4
strain&tip SH2+4
strain&tummy W3-4 W10+8
strain&twist K7+3 D7-4 D8+4
strain&underarm A1+6 A2-4 L1+8 L3-4 D2-4 D4-5
strain&uneven L9-9 D7-5 D8+7
strain&up SH4-3 L1+5 L3-3
strain&upperArm A1-3 L3+11
strain&upperBack B1-5 B11-4 B15+4 A4-9 K1+7 K3-9 K4-5 K5-9 L3-3 X2-4
strain&upperChest B1-3 B9-13 B10-4 B11+5 B15+9 X2-3
strain&waist K1-3 W1-4 W2-4 W3+10 W4-6 W5-3
strain&washed K7+4
strain&whole N2-5 N7-3 SH2-4 B1-5 B11-6 B12-4 B14-3 B15-4 A1-4 K1-5 K4-5 W1-4 W3-7 W9-4 W10-3 L3-5 L8-4 D2-5 D5-3 X1-5 X2+16 X3-12
strain&widerHips W9+4
strap N1-5 N2-4 N3-3 N5+15 N6-4 N8-3 SH1-3 SH6-5 SH7-3 B3-3 B4-4 B8-7 B10-3 B11-4 B12-3 B15-3 A2-5 A3-3 A4-3 K2-3 K3-3 K4-4 K6-3 K7-4 W2-3 W4-3 W7-3 W8-3 W11-3 W12-3 D6-9 X4-3
swing N5+5 N7-3 N8+3 SH2-4 SH6-5 B1-4 B5-3 W6+3 W7+6
swing&tight B1-5
swing&twist N5+7 N8-4 SH3-3 SH8-7 L9-3 X1-5
swing&underarm SH1+4 B6+4
swing&uneven W7-3 W11-4 L4-3 X1+5
swing&up W10+4
swing&upperChest SH6+3 B9-4 B10-4 B11-5
swing&waist W1-3 W5+5 W7+3 W10-3
swing&whole N8+7 W6-4 D5-4
than N3-4 N4-8 N6-5 N7-4 N8-4 SH2+6 SH6-7 SH7-5 SH8-6 B1-6 B3-3 B6+3 B7-3 B8-5 B11-4 B12-4 B13-4 B14-4 B15-4 A1-4 A2-5 A3-4 A5-4 K1-4 K2-4 K3-3 K4-4 K6-4 K7-4 W4-10 W5-6 W6-3 W7-3 W8-4 W10-3 W11-3 W12-4 L1-11 L2-6 L3-6 L4-10 L5-3 D3-4 L6-5 L7+14 L8-3 D2-5 D4-4 D6-4 D7-4 D8-4 X1-3 X2-5 X3-4 X4-3
than>apex B5-4 B6+4
than>armhole N2-4 SH4-6 B2-5 A1-3 K3-4 W1-6 W3-3 L1-13 L2-7 L3-4 L4-4 L6-7 L7+13 L8-4 L9-6 D1-5 D2-5 D5-4 D6-3 D7-7 X2-6
than>backWaist B2+5 B5-3
than>bust B10+3
than>chest B10+4
than>dart SH3-3 B1-11 B2-5 B3-9 B4-6 B5+7 B6+4 B10-5 B13-4 B15-3 A2-4 W2-3 L7-4
than>dartTip B4-3 B6+4
than>front SH5-3 B2-3 A4-5 K1-3 K3+5 K5-4 W1-4 L4-7 L7-4 D5+7
than>sleeveCap SH1-4 SH3-7 SH4-4 SH7-6 B4-5 B8-7 B9-5 B10-3 B14-4 A1-7 A2-13 A3-4 K5-5 W2-6 W11-3 L2-3 L6-6 L7+14 L9-3 X3-6
than>underBust B9-4 B14+4
than>underarm D4-4
than>upperChest B2-4 B4-4 B9+8 B14-8 W2-3
throat N1-8 N2+12 N3-4 N5-5 N6-4 N7+5 N8-5 B15-3 A1-3 A4-3 K1-4 K4-4 K5-3 X2-3 X3-5
throat&tight N2+5
throat&up N2-4 N7+4
tight B1+8 K1+7 W3+4 L3+6 L8+3 D7+3 X2+7
tight&tilt K1-3 K4+5
tight&tip N6+4
tight&toile X4+6
tight&tummy B1-4 W10+8
tight&underarm A1+14 A2-7 A5-4 D4-7 X2-4
tight&upperArm A1-4 L3+10 D2-4
tight&upperBack B1-3 A4-10 K1+12 K3-10 K4-3 K5-7 L3-3 X2-5
tight&upperChest B1-3 B4-4 B5+3 B9-4 B10-3 B11+10
tight&upright B3+4 B13-4 X2+5 X3-6
tight&waist B1-4 B2+3 W1-4 W2-4 W3+14 W4-7
tight&wavy B1-4 B8+4 L7-3
tight&whole N2-5 N7-4 N8-4 SH2-4 B6-3 B11-5 B15-4 A1-5 K1-8 W1-4 W3-6 W9-7 L3-6 D3-3 L7-4 L8-5 D2-5 D5-4 D7-5 X1-5 X2+15 X3-7
tight&wide B1-9 B3-4 B6+9 B10-3 B13-6 B15-3 X2-3
tight&widerHips W9+5
tight&wing X4+3
tilt K1+4 W6+3 W7+5 W8-4 L9+3 D8-4
tilt&tip N7-4 B7+3 X1-3
tilt&twist SH8-3 K1-3 W6-5 W7-5 W11-3 L9-4 X1+8
tilt&underarm SH5-3 SH8+5 A1-6 A5-8 K4-4 L3-4 L9-4 D4-6 X1-4
tilt&up N6+3 K1-5 L3+5
tilt&upperChest B11-4 B15+5
tilt&waist W2-3 W3-3 W4-5 W5+8
tilt&wavy D3+3
tilt&whole N7-3 SH8-3 B7-3 B11-4 K1-5 W1-4 W6-3 L5-5 D3-6 D4+6 X1-5 X3-6
tip N7-3 SH3-6 SH4+5 B6-3 B7+5
tip&tummy SH7+3
tip&underarm SH1+3 K4+4
tip&up N6+3
tip&upperChest B4-6 B5+5 B7-3
tip&waistDart B7-4 W12+6
toPlace SH1+5 B4-8 B15+4 L2-5
toPlace>apex N2-4 SH1-3 B1+5 B3-3 B4-5 B5+4 B6-8 B15+9 K4-3 W6-3 W7-3 W8-3 D2-4
toPlace>arm SH5-3 B15-3 A1-3 L1-3 L3+5 L4-6 L7-3 L8-5 D1-5 D2-4 D6-4 D7-3
toPlace>armhole N5-3 SH1+7 B8-4 A1-4 A3-4 A5-3 K1-3 K4+3 L1-3 L4-5 L6+7 L7-6 D5-4 D6-3
toPlace>bust N2-3 SH4-3 B3-7 B8+6 B15+7
toPlace>chest SH2+4 B1-4 B11-4 B15-3
toPlace>collar B6-5
toPlace>collarbone B4-4 B5-7 B6+8
toPlace>cutInSleeve D3+5 D2-4
toPlace>dart B5-3 B6-3 B8+4
toPlace>elbow N4-3 N6-3 SH1-3 SH3+7 SH4-6 SH6-3 SH7-3 B10-3 B15-4 K4-3 K5-3 K6-3 W1-3 W5-3 W6-3 W7-4 W8-4 W11-3 L1-4 L2-4 L3-3 L4-6 D3-4 L6-6 L7-6 L8-8 L9-4 D1-5 D2-3 D5-4 D6-5 D7-3 D8-4
toPlace>front W4-4 W5+7 W10-5 X1-8
toPlace>frontWaist B2-6 K1-3 K3-5 W1+4 W5-3
toPlace>hip W9-7
toPlace>nape N3-3 N8+5 K7-5
toPlace>neck N1-4 N2+5 N8-3 B2-4
toPlace>neckSide N6+3
toPlace>shoulderLength N6-5 SH1-5 SH2-6 SH3-8 SH4+7 SH5-7 SH6-7 SH7-7 SH8-3 B7-4 B15-3 K4-3 W12-3
toPlace>shoulderTip SH2+5 SH4-4 D2-3
toPlace>side SH8-4 B1-4 B8-4 B15-5 K1-4 K4+4 W9-4 L5+4 D3+5 L9-3
toPlace>sideSeam K4+5
toPlace>sleeve N4-3 SH3-4 SH4-3 SH5-4 SH7-4 B7-3 B8-6 B13-3 B15-4 A1-5 A2-4 A5-5 K2-3 K4-4 W1-4 W2-4 W9-3 W12-3 L1-6 L2-5 L3+5 L4-9 L5-4 D3-4 L7+5 L8-5 L9-5 D1-8 D2-6 D4-4 D5-6 D7-4 D8-3 X2-4
toPlace>sleeveHem SH1-3 SH2-6 SH3-5 SH4-9 B15-5 L1-3 D2+8 D7-8 D8-6
toPlace>tummy W1-4 W2-4 W3-5 W5+4 W6+3 W10-4
toPlace>underBust B2-4
toPlace>underarm SH1+7 SH8-3 B5-5 B6+7 A1-4 A2-6 L1+10 D2-5 D4-6
toPlace>upperArm L3+4
toPlace>upperChest B4-4 B5+6 B6-7 B7-4 B9-4
toPlace>waist SH3-4 B10-3 B14+5 K1-3 K4+5 K6-3 W3-8 W4-8 W5-5 L1-5 L5+3 D2-4 D4+5
toile SH8-3 B5-3 D5-3 X2-4 X3-4 X4+23
toile&wing X4+4
tummy B2-4 W10+17
tummy&up W10+6
tummy&waist W1-6 W2-5 W3+5 W4-6 W10-4
tummy&waistDart W12+4
twist N6-5 N7-3 N8-6 SH3-3 SH8-5 W7-3 W8-5 L3-4 L4+14 L9-8 D5-3 X1+22 X2-3 X3-4
twist&uneven L4-3
twist&upperArm L3-5 L4+8 X1-7
twist&wavy D8+6
twist&whole L4-6 X1+20 X2-7 X3-9
underBust N1-3 N2-4 N8-3 B3-5 B4-6 B5+9 B6-8 B7-4 B9-3 B10-3 B13+26 B14+14 A5-5 W1+8 W2-6 W3-4 W4-4 W12-4 L3-3 D4-4 X2-4 X3-6
underBust&upright B5-4 B10-8 B13+14 B14-12 A4-6 K6-4
underBust&waist B2-5 B5-6 B13-12 B14-9 A2-3 K2-4 K3-3 W1+12 W2-7 W3-10 W4-10 W5-4
underBust&wavy B9-4 B14+8 D8-4
underBust&whole B13-4 W1-3 W2+3 D5-4 X2-4 X3-4
underBust&wide N5-4 SH3-4 B10-5 B13+9 B14-5 A4-4 D6-4 X3-3
underarm B5-3 B8-8 A1+13 A2+11 L1+3 L4-3 L7-3 D4+14
underarm&up B5+5 B6-5 B7-3 A1-4
uneven SH3-5 SH4-3 SH8+8 B4-3 B9-3 W7-3 W9-4 W11+6 L4-9 D3-3 L9+12 D1-3 D2-4 D5+8 D6-4 D7-5 X1+10
uneven&waist W2-3 W5+3
uneven&wavy W8+3
up N2-6 N3-3 SH1-4 SH3-3 SH4-5 K1-7 L2+5 D1-5 D2-4 D6+3
up&whole K3+4 W2-3 D3+4 X2-6 X3-3
upperArm SH4-4 SH5-4 B1-4 B3-3 B7-4 B11-4 A2-5 A5-4 K1-4 K2-3 K4-3 W3-3 L1-4 L2-5 L3+14 L5-3 D3-4 L6+3 L7-4 L8-6 L9-4 D1-7 D5-4 D6-9 D7-5 D8-4 X1-8 X2-5
upperBack A3-4 A4+10 K1+6 K2-4 K3+7 K4-4 K5+9 W2-4 W3-5 W4-5 W11-7 X2-4 X3-5
upperBack&waist A4-11 K1-5 K3+5 K6+7 W2-7 W3-7 W4-7 W5-4
upperBack&wide B10-4 A4+7 K1-5 K3-4 K5-6
upperChest B3-3 B5+4 B9+14 B10+6 B11+12 B14-3 B15+7
upperChest&upright N1-4 B9-5 B10+7 A4-5
upperChest&wavy B9+10 B11-7 B15-4 D8-4
upperChest&wide N5-4 B9-6 B10+11 B11-9 A4-5
upright SH5-5 B1-4 B3-4 B6-4 B8-5 B9-4 B10+19 B13+5 B14-4 A3-7 A4+16 A5-10 K2-14 K5-4 K6+10 W2-6 W3-3 W4+7 D5-4 X3+6
upright&waist B10-9 A4-5 K6-6 W1-6 W2-11 W3-11 W4+15 D4+4
upright&wavy B10+3 B13+4 B14-4 K6+3 W4+3 L6-3 D8-4
upright&whole SH1-3 SH2-3 SH8-4 B10-10 B13-4 A4-9 K6-6 W1-3 W4-5 L1-4 L3-5 L5-3 D3-4 L8-3 D2+5 D4-5 D5-6 D6-3 D7-4 X1-4 X3+13 X4-3
upright&wide B10+6
vNeck N1+10 N2+6 N3-5 N4-3 N5-5 N6-6 N7-3 SH1-5 SH2-3 SH3-4 SH4-3 SH5-3 SH6-4 SH7+5 B3-3 B8-4 B10-3 B12-3 B13-4 B15-5 A1-3 A2-5 A3-4 A4-3 K4-4 K6-3 K7-3 W4-4 L1-3 L8-3 X3-5
waist A4-3 K2-4 K5-3 W1+11 W2+10 W3+14 W4+14 W5+4 W9-4 W10-3 X3-3
waist&waistDart W2-5 W12+6
waist&wavy W1-4 W2+3 W3-4 W4+4
waist&whole W1+4 W2-5 W3-3 W5-3 W9-5 X3-3
waist&wide B10-3 W1+4 W2-4 W3-7 W4+4 W5-3
waist&widerHips W1-6 W3-7 W4+4 W5-4 W12-3
waist&zip W3+7 W4-7
waistDart N2-4 N5-3 SH2-4 SH6-3 SH7-3 B3-3 B4-9 B5-8 B7-9 B8-3 B10-3 B11-4 B12-4 B13+5 B14-6 B15-3 A1-3 A2-3 A4-3 K1-4 K2-3 K4-4 K6-4 W1-5 W2-6 W3+6 W4-4 W9-4 W10-3 W12+9 L2-3 L3-4 L8-4 D2-4 X2-5 X3-5
waistDart&widerHips W12+4
walk N5-5 N8-6 SH5-6 B2-3 W9+6 L4-7 D3-4 X1+3
want>bustDart B5+3
want>dart B5-7 B6-7 B7-5 K2-4 K3-4 K6+4 W3-5 W12-4 L8+5
want>front N8-4 A1+3
want>neck N2-8 N3-5 N4-4 N5+5 N6-5 N7-4 N8-4 SH1-5 SH2-3 SH6-4 SH7-6 SH8-3 B5-3 B8-6 B10-4 B11-4 B15-4 A2-3 A3-3 A5+4 K1-4 K6-3 K7-6 W1-3 W3-4 W6-4 W8-3 W10-3 W11-3 L1-3 L5-3 D3-3 L6-3 L7-3 L8-4 D1-3 D7-4 D8-3 X2-3
want>placket B12-5
want>shoulderLength SH4+3 L1-3 L2-4
want>upperBack A4-3 K1-4 K3-4 K5-4 K6-4 W1+5 W2-4 W3-4 W4-3
washed N1-5 N2-7 N4-6 N5-6 N6-5 N7-5 N8-5 SH1-5 SH2-6 SH3-5 SH4-7 SH5-5 SH6-5 SH7-6 SH8-6 B1-7 B2-5 B3-5 B4-5 B5-5 B6-5 B8-5 B9-5 B10-5 B11-7 B12-5 B13-5 B14-6 B15-6 A1-6 A2-5 A3-5 A4-5 A5-5 K1-7 K2-5 K3-5 K4-6 K5-5 K6-5 W1-5 W2-5 W3-7 W4-5 W5-5 W6-5 W7-5 W8-5 W9-6 W10-6 W11-5 W12-5 L1-5 L2-5 L3-6 L4-5 L5-7 D3-7 L6-5 L7-6 L8-6 L9-5 D1-5 D2-6 D4-5 D5-5 D6-5 D7-6 D8-5 X1-6 X2-11 X3-4 X4+13
wavy SH3-4 B5-3 B7+4 B8-4 B9+3 B11-3 A1-4 A2-4 K3-5 K6-4 L1-3 L2-4 L6+6 L9-7 D1-3 D6-5 D7-7 D8+16
wavy&whole N3+3 X3-4
whole N1-4 N2-4 N5-3 SH2-3 SH3-5 SH4-6 SH8-3 B2-3 B3-4 B8-4 B10-4 B11-4 B12-3 B13-3 B14-3 B15-3 A2-4 A4-4 K1-4 K3-3 W1+6 W2-4 W3-3 W4-3 W5-5 W9-3 L2-3 L3-3 L4-5 D3+3 L7-4 L8-3 D2-3 D5+4 D7-3 X1+8 X2+22 X3+19
whole&wide N3-4 N5-6 SH3-5 B6-7 B10-7 B13-5 A4-7 W1-4 W4-5 D3-3 D4-3 D5-4 D6-6 X1-5 X2-10 X3+10
wide N1-6 N2-5 N5+9 N8-5 SH3+6 SH4-4 B1-7 B3-12 B4-3 B5-4 B6+10 B8-3 B9-7 B10+12 B11-4 A4+6 K1-4 K3-3 K5-6 W2-4 W3-4 W12-4 L9-4 D6+5 D7-4 D8-4 X2-3
widerHips B14-4 A5-3 W3-5 W9+13
wing N1-3 N2-5 N4-4 N5-6 N6-4 N7-4 N8-5 SH1+4 SH2-6 SH3-9 SH4-11 SH5-5 SH7-9 B1-4 B2-5 B3-4 B4-4 B5-4 B6-4 B7-4 B8-5 B9-4 B10-4 B11-5 B12-4 B13-4 B14-4 B15-4 A1-10 A2-4 A4-4 A5-5 K1-5 K2-4 K3-5 K4-6 K5-4 K6-4 K7-4 W1-5 W2-4 W3-4 W4-4 W5-4 W6-4 W7-4 W8-4 W9-4 W10-4 W11-4 W12-4 L1-6 L3-8 L4-8 L5-5 D3-5 L6-6 L7-8 L8-5 L9-5 D1+23 D2-6 D4+5 D5-5 D6-6 D7-5 D8-5 X1-4 X2-6 X3-4
wornOn N1+4 N2-4 N5+5 N7+10 N8+4 SH3-5 SH5-6 SH6-5 SH8-5 B1-4 B11-3 K4-3 W6-3 W10-4 D5-4
wrist N8-3 SH3-3 SH8-3 B2-3 K3-4 W6-3 W7-3 W10-4 W11-8 L1-4 L2-4 L6-4 L7-4 L9+4 D1-4 D2-3 D5-3 D6-6 D7+7 D8-8 X1-4
zip W1-3 W2-3 W3+7 W4-7
~abdomen B2-5 W10+10
~abrupt B7+5
~accident B2-4 K3-3 W1+5 D3-3 X2-3 X3-4
~accordion N4-4 SH8-4 A4-4 A5-5 K2+6 K3-3 K5-5 W1-5 W2+6 W3-7 W4-8 W5-3 L4-3 D5-4
~actual X4+3
~adjustment SH3-4 SH6-4 B1+7 B2-4 B3+7 B4-6 B5-6 B6-4 B8-3 B9-4 B12-4 B13-4 B14-4 B15-5 A1-3 A2-3 K2-3 W3-4 W8-3 L1-3 L3-3 D7-3 X2-4
~against N1+3
~aim B1-3 B4-7 B5+6
~all N7+5 B2-6 W1+11 W2+6 W3-5 W5-4 L4-3 D5+7 X3+6
~allow D3+5
~angel N5-3 SH3-5 SH4-4 SH8-3 D1+5
~ann L1-5 L2+6 L3-3 L4-4 L6-3 D1-6 D6-4
~anywher X2+4
~apart N5-4 SH3-3 B3-6 B4-5 B5-6 B6+10 B7-3 B8-3 B12+4 B13-5 A4-5 W3-3 W4-4 W12-5 D6-3 X3-4
~apex B1-9 B3-7 B5+13 B6+7 B7-7 B10-3 B11-4 K1-3 X2-4
~appear A5+4 L4-3 L6+4 L8-3 D5-5
~arch B2+5 W1-4
~arm SH3+3 B8+3 B11+4 A1+5 A2+4 A3+4 A4+5 A5+4 L5+3 D3+8 D4+7
~armhol SH1+4 SH3+4 B8+6 B11+4 A1+5 A2+5 A3+5 A5+5 L6+5 L7+9
~armpit SH1+4 SH8-4 B6+4 A1+10 A5+19 L1+3
~armsc SH3-7 SH4+5 B8+6 A1+6 A2+5 L7+5
~armse SH4+4
~askew N2-4 N8-5 SH3-3 SH8-7 A2-4 K5-3 K7-3 W4-3 W5-4 W8-4 W11-6 L4-4 L9-9 D5-7 D8-3 X1+10 X3-3
~asymmetric N5-3 SH3-6 SH4-5 SH8+7 X1-4
~asymmetrical SH1-6 SH2-5 SH3-5 SH4-3 SH5-3 SH8+7 B10-4 B15-5 K2-4 L1-4
~axi B4-4 B6+3
~back N7+7 A4+8 K1+9 K2+6 K3+13 K5+8 K6+5 D5+4
~backsid W9+10
~backward N2-4 N5-3 N7+15 N8-5 SH3-4 W6-3 W7+5
~bad SH1+7 SH2-6 SH3-6 SH4-3
~bag B8+9 B10-3 A2+5 A5-5 K6-3 L3-4 D4-7
~balanc D5+6 X1-4
~band B8-5 B12+6 A2+6 D7+3
~bandag B1+4 B11-3 B14-3 L3+6 L4-3 L7-4 L8-3 D2-3 D7-4
~barber L4-3 X1+5
~bas N2+12 N3-6 N5-3 N6-7 N8-5 SH2+3 B15-6 K7+8
~bat SH1-4 A1-6 A3-4 L2-3 L3-4 L4-4 D4+5
~batw D2+4 D5+4
~beak W12+4
~behind N4+4 N7+6 SH2-4 SH5+11 SH6-3 B8-4 B10-4 A3+10 A4+5 K7-4 W6-3 W7+4 L6-5 D5+4 X3-3
~bel W5+4 W10+8
~bell W8+3
~below B3-6 B5+8 B13+8 B14+6 A2+9 W2+3 W5-4 W12+6
~belt W1+3 W3-4 W4-5
~bend N1+7 A5+4 K1-4 W8+4 L3-10 L8+21
~besid N2-4 N6+5 B4-6 B5-10 B6+9 B10+4 D6+4
~between N1-5 N6+8 B6+4 B8-3 B9+5 B11+5 B12+6 B15+10 K4-6
~beyond SH1-5 SH2-5 SH5-6 SH7-7 B4+5 B5-5 B6-9 D1-3
~bia L4-3 L9-7 D7-4 D8+8 X1-4
~bicep L2-4 L3+13 L4-4 L6-4 L7-4 D2-5 D7-3
~big N2-4 N3-4 N4-3 N5-4 N6-4 N7-4 N8-4 SH1-4 SH4-3 SH5-4 SH6-4 SH7-4 SH8-3 B1-8 B2-5 B3+14 B4-5 B5-5 B7-4 B8-7 B9-4 B10-5 B11-3 B12-4 B14-5 B15-5 A1-5 A3-4 A4-5 A5-5 K2-5 K3-3 K4-3 K7-3 W1-4 W2-4 W3-10 W4+5 W5-4 W6-4 W8-4 W9+4 W10-3 W11-3 W12-4 L1-4 L2-5 L3-3 L4-8 L5-4 D3-3 L6+8 L7-7 L8-3 L9-6 D1-6 D2-4 D5-4 D6+5 D7-5 D8-7 X1-4 X2-3 X3+12 X4-3
~bigger SH3+5 SH4-5 A2-10 K6+3 W1-4 W3+6 W4-8 L2-5 L5-3 D3-3 L6+6 L7+7
~billow B3+4 B13+6 B14-6 K2-6 K6+4
~bind N1-4 SH3-3 SH4-4 SH7-5 B2-3 B8-5 B11+5 B14-3 A1+12 A2-8 A3-3 A5-3 K4-4 L7-8 L8+6 L9-3 D4-3 D6-3 D7+5 D8-4
~bingo L3+4 L4-5 L6-3
~bit SH3-10 SH4+4 B8-3 A1+3 A2-4 L7-5
~blad A3+4 K1+9 K4+17 K5+6 W2-3
~blister B4-7 B7+6 W12-3
~blood A1+3 L9-5 D6-3 D7+6 D8-6
~blou N2+5 N7+4 SH8+7 B13-7 B14+5 K6-10 W4-3 W10-5 D3+6 X1+3 X3-4 X4+3
~bodic B1-4 B14+4 B15-3 W1+9 W2+7 W3-3 W4-4 D3+4 L6-7 L7+7
~bolster N3-3 N4+5 K7-3
~bon B9+4 K1-4 K3-3 K4+9 K5-3 W1-3 W2+4 W3-3 W4-4
~boob B1+5 B3+9 B5+3 B7-4 B8+5 B10-4
~bosom B1+10 B3+9 B5-5 B12-3 X2-3
~bottom A2+5 K2+5 W11+7 L9+4
~bow W6-6 W7-5 W8+9
~box K2-4 K6+4 W3-4 W4+4
~bra B1+4 B4+5 B8+8 A2+4 D6+5 X2-9
~breast N2-3 B1+10 B3+13 B6-5 B11-5 B15+4
~breastbon B5-6 B6+7
~breath W1-3 W3+10 W4-8
~broad N1-6 N2-7 N3-5 N4-4 N5+8 N6-4 N7-4 N8-3 SH1-4 SH2-5 SH4+10 SH5-4 SH6-4 SH7-4 SH8-4 B1-8 B2-3 B3-5 B6-5 B7-3 B8-3 B9-6 B10+6 B12-4 B13-4 B14-3 B15-4 A1-4 A2-3 A3-4 A5-4 K1+6 K2-4 K3-5 K4-4 K5-4 K6-4 K7-4 W1-3 W3-4 W4-3 W5-3 W6-3 W7-3 W8-3 W9-3 W10-3 W11-3 W12-3 L1-3 L2-3 L3-5 L4-4 L5-3 D3-3 L6-3 L7-3 L8-4 D1-4 D2-4 D4-3 D5-4 D6-4 D7-4 X1-3 X2-6 X3-4 X4-3
~bubbl B4-8 B7+9 W2-4 W12+8 L6-4
~buckl B9+5 B10-3 A5-3 L1-7 L2+13 L4-4 L6-14 L7-5 D5-6
~buffalo K7+5
~bulg W6-5 W8+6 W12+10
~bulk N4+7 A1-4 A2-4 A5-6 K5-4 D4+11
~bum B14-4 A5-4 K2+7 K6-3 W6-5 W7+6 W9+8
~bump N2-4 N3-3 K7+9 W10-5
~bunch N3-3 SH5+7 SH8-3 A3-4 A4+4 A5+10 K7-4 D5-4
~bust B3+10 B4+10 B5+6 B9+8 B10-3 B13+7 B14+7 B15+6
~bustlin B1-3 B3-4 B5+5 B14-3
~butt W6-5 W7+5 W9+7
~butterf SH1-4 A2-4 D1+5 D4-3
~button N2+7 B8-4 B12+17 W10-3 D6-4 X2-3
~buttonhol B1-3 B12+7 B15-4
~calico X4+11
~can L4+4
~cand L4+4
~cap L1+6 L2+11 L3-4 L6+5 L7+9 L9-8 D5+3 D7+4
~careful B7+6
~cas SH3-3 L3+5
~catch N1-3 N2-3 N3-3 N4-4 N5-3 N6-4 N7-4 N8-3 SH1-3 SH2-3 SH4-3 SH5+4 SH6-5 SH7-3 SH8-3 B1-3 B2-4 B3-3 B4-3 B5-3 B7-5 B8-3 B9-3 B10-3 B11-3 B12-3 B13-3 B14-3 B15-5 A1-3 A2-3 A3-5 A4-7 A5-4 K1-4 K2-3 K3-4 K4-3 K5-5 K6-3 K7-3 W1-4 W3-4 W5-3 W6-4 W7-4 W8-4 W9+10 W10-4 W11-5 W12-4 L3-4 L5-4 D3-3 L7-3 L9-3 D2-5 D4-3 D5-4 D7-3 D8-3 X1-5 X2-4 X3-4 X4-3
~cav SH2-3 SH6-3 B1-3 B3+10 B5-3 B9-10 B10-4 B11-5 B12-3 B15-3
~cavern B1-6 B3-3 B5-3 B13+6 B14-5
~centr B4-5 B5-4 B6+7 K2+4 K5-3 W1-5 W2-8 W3-4 W4-5 L1+3 L9-6 X1+13
~chaf SH4-4 A1+7 A2-4
~chang X4+7
~chest B3+6 B9+14 B11+9 B15-4
~chin N1-5 N7+4 N8-3
~chok N1-3 N2+11 N4-3 N5-4 N6-3 N7+11 N8-3 SH3-3 SH5-7 SH8-3 B1-3 B2-4 B5-3 B9-3 B11-4 B12-3 B14-6 A1-5 A2-4 A3-5 A4-4 K1-5 K3-4 K4-4 K5-4 K7-3 W1-3 W2-3 W5-4 W6-3 W7-4 W9-3 W10-3 L4-4 L6-3 L8-3 D1-3 D5-4 D8-3 X1-4 X2-3
~circulation L3+4 L8-3
~circumferenc N2+5 N5-5 B1+4 B2-5 W1-7
~clasp N1+3 B12-5
~cleavag N1-5 N2-4 B4-6 B5-7 B6+7 B7-5
~climb N3-4 N8+7 B2+4 K3+3 K7-6 W9+4 D3-11
~clo N3+6 N4-4 N5-5 SH4+8 B4-3 B5-5 B6+7 B11-4 B12+4 B13+3 K1-3 K7-3 L7-5 X2+6
~cloth N4+6 SH1+3 SH2+3 B9+6 B11-8 A2-4 A5+6 K1-5 K2+7 D4+7 D5-3 X4+10
~coat X3+3
~collap B1-4 B3+4 L1-4 L2+6 L6-4 L7-7
~collar N1+5 N2+4 N4+3 N5+5
~collarbon SH8+5 B3-3 B4-3 B5+5 B6-5 B7-4 B9+10 B10-6 B15-4 X1-4
~collect B14+3 A5-3 K2+3
~complet X1+5 X2+7
~con SH7-5 B1-3 B4+5 B5-3 B6-4 B7+6 B8-4 B12-3 B15-4 K2-3 K7-3 W10-4 W12-5 L2-3 L6-4 L7-3 D1-4 D6-3
~concav N2-4 B3-4 B9+6
~concertina A5-4 K2-5 W2+7 W3-6 W4-6 D4-4
~contour W12+4
~corkscrew L4+11 X1+6
~corner SH1-3 SH3-9 SH4-10 SH5-4 SH6-3 SH7+11
~corset W3+5
~crea SH2-3 SH8+6 B8-4 A2-4 A5+12 L4+5 D4-4 D5-5
~creep N3-3 N7+9 N8+7 SH5-9 SH6-4 K3+3 W9+4
~crisp D8+3
~crook D8-4
~crop B2-4 K3-3 W1+5 D3-3 X2-3 X3-4
~crosswa K5+6
~crosswi B13-5 B14+4 K2+6 K4-3
~crown A2-4 L2+9 L6+8 D1-4 D5-4
~crumpl B14+3 A2-6 A5+9 K2+3 K6-4 W1-3 W5-4 L8-4 D4-6
~crust L4-4 L6+4
~crutch A1+5
~cuff B5-3 W1-5 L1-4 L2-3 D1-3 D6-6 D7+6 D8-9
~cup B3+4
~cupboard D3+4
~curtain B5-3 A1-6 A2-6 A5-5 D4+5
~curv N1-3 SH7+9 SH8-3 K2+5 K5-6 K7+4 W8+6 X1-3
~cushion W3-5 W4+6
~cut L1-3 D2+5 D7+3
~dad N5-3 SH3+5 SH4-5
~dart B4+10 B5+13 B6+14 B7+8 W12+6
~daylight N1-6 N6+4
~dd B1+5 B3-6
~deep SH3-4 B8-4 A2+8 K2+4
~definition W3-3 W4+5
~dent SH1-6 SH2-3 SH3-3 SH5-3 SH7+3 B6-3 B7+5 L1-4 L2-4 L6-4 L7+8 D1-3
~diagonal B11-5 B15+6 K1-5 K4+7 L1+4
~diamond W12+7
~different X4+9
~dig N8+5 SH2-5 SH4+5 D7+8
~dimpl N8-4 B4-7 B7+9 W12-6
~dip SH3-4 SH7+4 B14-3 A2-3 K3-4 K6-5 W6-5 W7-5 W8-5 W11+8 L9+6 D6-4 D7-6 D8-6
~disappear W1-7 W2-7 W3-9 W4+8 W5-4
~distanc B4-5 B5-6 B6+12 B7-8 B11-4 W11+3 X2-4 X3-6
~dolman W11-4 D5+9 D8+5
~dowager N3-3 K7+7
~downhill W2-6 W3-4 W5+4
~draft N1-8 N3-5 N5-3 N6-6 N8-4 SH1+4 SH2+6 SH3-6 SH4-4 SH5-3 SH6-4 SH8-3 B1-5 B2-4 B3+5 B4-5 B5+4 B6-5 B8-8 B9-5 B10-4 B12-6 B13-6 B14-4 B15-3 A2-3 A3-7 A5-3 K3-4 K5-4 K6-3 W2-4 W4-4 W5-4 W8-5 W9-4 W10-3 W11-3 W12-4 L5-3 L7-7 L8-3 L9-4 D1-7 D5-4 X1-3 X3-5 X4-3
~drag N7+5 SH8+3 B15+4 K4+3 W10-3 L3-7 D2+8
~drap N7-4 N8-6 A2-3 L4-4 D3+4 L9-6 D1+4 D4+4 D5+19
~draught N3+5
~dress N2-4 N5-4 N8-4 SH3-4 SH5-4 SH8-5 B2+4 B7-3 B10-3 B11-3 B14-4 B15-4 K3-5 W2-6 W3+4 W4-9 W5-3 W7-3 W9+12 L4-6 L5+3 D3+5 L7-4 L8-4 D2-3 X1+8
~drift N5-4 N7-10 N8-7 SH3-3 SH5+9 SH6-5 B2-3 W6+6 W7+7 W8-5 D5-5 X1+6
~drink L3-4 L8+4
~driv K1+3
~droop N3-4 N7-4 SH8+5 B1-4 B3+5 A2+4 A5-4 K5+4 L1-3 D6-4
~drop SH1+4 SH2-4 SH3+13 SH7-3 B1-4 B2-4 B3-4 B5-5 B8-5 A1-5 K3-4 W1-4 W5+4 W11+5 L7-4 L9-8 D4-3 D8+4
~drown N1-7 N2-4 N3-5 N4-5 N5-5 N6-4 N7-4 N8-6 SH1-7 SH2-4 SH3-4 SH4-4 SH5-4 SH6-4 SH7-4 SH8-6 B1-4 B2-4 B3-9 B4-4 B5-3 B6-4 B7-4 B8-8 B9-5 B10-6 B11-3 B12-4 B13-9 B14-6 B15-4 A1-4 A2-6 A3-6 A4-8 A5-3 K1-3 K2-6 K3-4 K4-4 K5-5 K6-7 K7-4 W1-4 W2-3 W3-3 W4-10 W5-4 W6-4 W7-4 W8-4 W9-4 W10-4 W11-4 W12-5 L1-4 L2-7 L3-5 L4-5 L5-4 D3-5 L6-4 L7-4 L8-4 L9-4 D1-4 D2-4 D4-5 D5-5 D6-5 D7-4 D8-4 X1-4 X2-4 X3+13 X4-6
~drum B1+3
~dur N7-3 X1+4
~ear L8+3
~eas N2-4 SH4-3 B1-3 B5-3 A1-3 K1-4 L1-10 L2-12 L3-9 L4-3 L5-6 L6+15 L7+11 L8-4 D1-4 D2-6 D5-4 D7-5 X2-4
~east B5-3 B6+5
~edg B8+8 A3+9 A4-4 W11+5 D6-6 D7+12 D8+6
~elastic W1+8 W2-7 W3-9 W4-6 X2-3
~elbow SH2-3 SH3+4 B4-3 B6-3 A5-4 K1-4 W3-3 L3-6 L4-5 L7-4 L8+25 D7-3 X2-4
~empir B5-4 B8-4 B13+3 B14-4 A3-3 W1+5 W2-4 W3-4 W4-4
~empt SH1+5 SH2-4 SH3-3 SH7-5 B3+12 B4-6 B5-7 B6-7 B7-4
~end SH1+7 SH2+8 SH6-3 B4+3 B6-5 B7+8 L9+4
~enormou B6-4 A2-3 W4-3 D6-3 X3+6
~entir X2+4
~equal D3+5
~erect N1-4 N2-4 N3-4 N4-4 N5-4 N6-4 N7-5 N8-4 SH1-4 SH2-4 SH3-4 SH4-4 SH5-4 SH6-7 SH7-4 SH8-4 B1-4 B2-4 B3-4 B4-4 B5-4 B6-4 B7-4 B8-4 B9-4 B10-4 B11-4 B12-4 B13-4 B14-4 B15-4 A1-4 A2-4 A3-4 A4-8 A5-4 K1-5 K2-5 K3-5 K4-4 K5+12 K6-7 K7-4 W1-4 W2-4 W3-4 W4-4 W5-4 W6-4 W7-4 W8-4 W9-4 W10-4 W11-4 W12-4 L1-4 L2-4 L3-4 L4-4 L5-4 D3-4 L6-4 L7-4 L8-4 L9-4 D1-4 D2-4 D4-4 D5-5 D6-4 D7-4 D8-4 X1-4 X2-4 X3-4 X4-4
~everyth SH1+3 B1-3 W9-4 D5-4 D6+3 X1+4 X2+7 X3+5
~everywher B1-4 B2-4 B10-5 B11-3 B14-5 A4-4 K1-3 K6-3 W1+4 W4-3 W5-4 D3-3 D5-4 X1-5 X2+10 X3+17
~excess N1+4 N5-5 B9+5 B11-3 A2-5 K2-4 W1-4 W2+4 L2+5 D4+5
~expo D6+4
~extra SH1+4 B3+6 B9+5 B14+4 L2+6 L6-3 D4-3
~fabric N2-6 N3-3 N4+8 B9+5 B13-4 A1-5 A2-9 K7-6 W9-4 D4+13 X4+10
~fac N3+5
~fall N1+9 N2-6 N3-6 N6-5 SH3+11 SH4-4 B2-4 K7-3 W4-5 W5+5 L1-4 L2-4 L3-4 L4-5 L6-3 D1-4 D5+7 D6-3
~fan A1+4
~fashion X4+4
~fasten W3+4
~fat N3-7 N8-3 K7+5 L3+4
~fill B3+5
~fin N1-3 N3-3 SH1-4 SH6-3 SH8-4 A3-4 L2-5 L6-3 L9-3 D1+8 D4-4 D5-3 D6-3 D7-4 D8-4 X4-4
~final SH8-3 A5-4 D4-3 X4+10
~finger N3+4
~finish X4+8
~fishe B7-3 W12+5
~fist W1-3 W3-4 W4+5
~flap N1+4 B8+6
~flar D1+8
~flat N2-3 SH7-4 B5-5 B6-3 B7+5 A1-4 A2-4 A3+6 A4-4 K1-3 K5+11 L1+7 L7-4 D1-7
~flatten N1-6 N2-6 N3-4 N4-5 N5-4 N6-4 N7-5 N8-5 SH1-4 SH2-5 SH3-4 SH4-5 SH5-4 SH6-5 SH7-5 SH8-5 B1+12 B2-4 B3-4 B4-4 B5-4 B6-5 B7-8 B8-4 B9-4 B10-4 B11-6 B12-5 B13-5 B14-5 B15-5 A1-5 A2-4 A3-7 A4-4 A5-5 K1-9 K2-5 K3-4 K4-5 K5-6 K6-5 K7-5 W1-5 W2-5 W3-6 W4-4 W5-5 W6-4 W7-4 W8-5 W9-5 W10-5 W11-5 W12-4 L1-9 L2-6 L3-6 L4-4 L5-4 D3-5 L6-5 L7-5 L8-6 L9-4 D1-4 D2-5 D4-4 D5-4 D6-4 D7-5 D8-4 X1-5 X2-7 X3-5 X4-5
~flex A1-5 K1-7 L3+7 L5-3 L8-6
~fli D1+11 D5-3
~float N1-4 SH1+5 SH2-5 B2+5 K2-3 K6-5 W5-4 D1+4 D5+4 D8+3
~flop N1+5 N2-4 N5-4 N8-4 SH5-4 B3+4 B8-4 A3+5 A4-5 W3-3 L1-3 L2+5 L6-8 D5-4 D7-3
~flut L9-4 D6-4 D7-5 D8+8 X3-3
~flutter N7-3 D2+5 D5+5
~fly N1-4 N2-4 N3-4 N4-3 N6-3 N7-3 N8-3 SH1-5 SH2-3 SH5-3 SH6-4 SH8-5 B1-3 B2-3 B3-3 B4-3 B5-3 B6-3 B7-3 B8-3 B9-3 B10-3 B11-3 B12+3 B13-3 B14-3 B15-3 A2-3 A3-4 A4-3 A5-3 K1-4 K2-3 K3-3 K4-3 K5-3 K6-3 K7-3 W1-3 W2-3 W3-3 W4-3 W5-3 W6-3 W7-3 W8-3 W9-3 W10-3 W11-3 W12-3 L1-3 L2-5 L3-3 L5-3 D3-3 L8-3 L9-3 D1-3 D2-3 D4+8 D6-3 D7-3 D8-3 X1-3 X2-3 X3-3 X4-4
~fold B1-4 B14+4 W2+5 L6-5 D4+3 D5+9 X4+3
~follow K6+4
~forever N7+5 N8-4 W5-5
~form N4+4
~forward N2-5 N7+6 N8+12 SH3-5 SH4-3 SH5+14 SH6+4 B1-4 A5-3 K1+9 K3-4 W7-3 L4+3 D5-5
~fourth B12+3
~fram SH4+6 X2-5 X3-4
~freedom D3+5 D2-3
~fril L9-3 D7-5 D8+5
~frill L6-4 D8+4
~from B3-3 B8+3 B11+5 B15+4 A5-3 W3-3 D2+6
~front N8+5 SH6+6 B2+12 B8+4 B10+8 B11+7 B14+5 A5+15 W5+8 W6+4 W10+5 D5+5
~frontward N8+3
~full N8-4 B5+5 A5-3 L2-3 L4-5 L6-5 D5+7
~fullest B1+4 B3+6 B4+5 B5-5 B6-6 B11-4
~further SH2-5 SH4-5 SH5+4 SH6-5 B3-5 B4-3 B5-5 B6+7 B10-4 L7-3
~gabl L1-5 L2+6 L3-3 L4-4 L6-3 D1-6 D6-4
~gag N1-5 N2+13 N4-4 N5-4 N6-4 N7-8 SH2-3 SH3-3 SH4-3 SH6-4 SH7-3 SH8-3 B1-3 B2-7 B3-3 B5-3 B7-3 B8-4 B9-4 B10-6 B11-5 B12-4 B14-8 B15-4 A1-5 A2-4 A3-3 A5-5 K4-3 K5-3 K7-4 W5-5 W6-5 W8-3 W9-3 W10-5 W12-3 L4-5 L6-4 L8-3 L9-3 D1-3 D4-3 D5-3 D8-3 X1-6 X2-3 X4-3
~gap N6+4 B8+6 B12+4
~gaposi N1+6 N2-5 N5-4 N6-6
~garment N2-5 N7+8 N8+8 SH5-4 SH6-8 SH8-3 W6-5 W7-4 L4-6 L9-4 D5-5 X1+11 X2+4 X3+4
~gather B7-4 A1-4 K2+8 W9-4 W12-3 L1-3 L2-11 L3-4 L5-3 L6+7 L7+6 D4+3
~gigantic SH7-3 B8-3 A1-4 A2+6 L7-5 X3-3
~girl B1+6 B3+4 B13+5 W10-5
~giv A4-4 K1+4
~grain N1-3 N2-4 N3-3 N4-3 N5-4 N8-3 SH1-3 SH2-3 SH4-4 SH6-3 SH7-3 SH8-5 B1-3 B2-5 B3-3 B4-3 B5-3 B6-3 B7-4 B8-3 B9-3 B10-3 B11-4 B12-3 B13-3 B14-3 B15-3 A1-4 A2-3 A3-3 A4-3 A5-3 K1-4 K2-3 K3-4 K4-4 K5-3 K6-3 K7-4 W1-4 W2-3 W3-4 W5-4 W6-5 W7-5 W8-4 W9-3 W10-3 W11-5 W12-3 L1-4 L2-3 L3-3 L5-4 D3-4 L6-3 L8-3 L9-5 D1-3 D2-3 D4-3 D5-3 D6-3 D8-5 X1+13 X4-3
~grapefruit B13+4
~grip N1-6 N2+6 SH2+4 SH4-3 K1-4 W3+4 L1-4 L3+7 L4-4 D3-3 L7-3 D1-4 D2-5 D5-3 D6-5 D7+4
~groov W3+5
~grow D3+4 D6-6 D8+6
~gut W10+9
~gutter N1+3
~hairlin N3-4 N8+7 K7-4
~halv SH7+4
~hammock N4-5 A4-5 K1-5 K2-3 K3-3 K5+6
~hand D3+4
~hang N2-3 N6-3 SH3+7 SH6-3 B3-3 B8-3 A2+4 L4+7 D5-5 D8+5 X3+4
~hanger SH2+5
~hard N2+6 L5-4 L6-7
~haul D3+5 D2-3
~head SH5+3 B8+3
~headlight SH7-6 B1-3 B4+8 B7-5 B10-3 B11-3 B14-3 B15-4 A4-3 K2-4 K7-3 W4-3 W8-3 W10-4 W12-4 L2-4 L6-4 L7-4 X1-3 X3-3
~heap K2+5 W9-3
~heard K1+3
~helicopter L3-3 L4-4 D1+5
~hem K3+4 W10+6 W11+4 L9+8 D7+7 D8+10
~hemlin W11+9 L9-4
~high SH8+5 B2+5 B4-3 B5+8 B6-4 A1+6 A4-3 K1-3 K3+11 W2+4 W3-4 W4-4 W5-5 W10-4 L2+3 L7-3 L9+5 D8-4
~hik B2+10 K3+7 K6-3 W1-3 W9-3 W10-9 D3-4
~hip W3-3 W9+10
~hipbon W2+4
~hit W1-5 W2+6 W3-5 W4-6 W5-4
~hitch N5+3 N7-4 SH3-4 SH4-8 K3-3 L1+8 D3-4 D1-4
~hoist B1-4 B2+5
~hold N1+4 N2-5 K1+4 L3-5 L8+7 D6+3
~hollow N5-3 N6+4 SH1-4 SH2-4 SH5+4 SH6-4 SH8-3 B3-8 B8-3 B9+9 B10-4 B11-5 A1-3 A4-4 K2+7 W9-5 W12-4 L2-4 L3-5 L4-4 L6-4 L7-5 D1+5 D4-4 D5-4 D6-3 X3-3
~horizontal B3-3 B8-3 B14+4 A4-3 K2-3 K5+5 L3+3 L4-4 L9-4 D1+11 D6-3 D7-6 D8-4
~hug N2-4 SH2-3 SH4-3 B1-5 B11-4 A1-5 A2+5 W3-5 L7-5 L8-4 D2-3 D7-4 X2-8 X3+10
~hulk K1+5
~hump N1-6 N2-7 N3-4 N4-6 N5-6 N6-3 N8-3 K3-6 K7+18
~hunch N7-3 SH5+3
~hurt SH4-4 A1+5 L3-4 D7-4
~impossibl B11-3 K1+6
~incredibl K1+5
~inner N6+7 SH2-4 SH3-4 SH4-7 SH5-4 SH6-5 B2-4 K3-3 D3-5 D7-3
~insid SH2-5 SH3-6 SH4+7 SH7-4 L3-3 L9+10 D6+4
~ish SH2+4 SH4-3
~jab N1-5 N2+3
~jacket N5-3 SH3+5 SH4-5
~jam A1+4
~jewel N1-6 N2-6 N5+7 N6-4 SH1-3 K7-3
~jog SH7+5
~join L6-6 L7+4
~joint N8-3 SH1-3 SH2-7 SH4+5 SH5+4 SH6-6 SH7-3 A1-5 A5+5 W6-3
~jump W11-3
~jut B2-4 W5-3 W10+5 D1+7
~keep N5+6 N7-4 SH3-3 SH8-5
~kick N1-6 N2-6 N7-4 N8-6 B5-3 B13-5 B14-4 W1-5 W5-4 W9-4 W10+14 D3-5
~kimono W11-4 D3+4 D2+5 D5+3
~kink SH3-3 SH4-3 SH7+9 A1-5 A2-4 L7-4
~kne W6+5
~knob K7+5 D2+5
~lack B2+3 B14-3 W1+7 W2-4 L1+9 L2-8 L3-4 D3-3 L6-8 L9-5 D1-3 D2-5 D7-4
~lampshad D1+4
~larg N1-4 N3-3 N5-5 N7-3 N8-3 SH1-3 SH3-4 SH6-4 SH7-3 B2-4 B3-5 B6-4 B8-3 B10+5 B11-3 B13-5 B14-5 A1-3 A2+4 A3-4 A4+5 K1-6 K3-5 K5-5 K6-5 K7-3 W4-6 W10-4 L2-3 L5-3 D3-4 L6-4 L7-5 D2-3 D4-4 D5-4 D6-6 X1-4 X3+8
~lean N1+5 N2-4 N6-4 N7-3 N8-4 SH2-3 SH3-4 SH4-3 SH5-9 SH6+4 SH8-3 B2-3 W5-5 W6+9 W7+4 W8-6 W11-4 L9-4 D5-3 X1+6
~leash N1-6 N2+6 N3-4 N4-5 N5-5 K7-6
~leg L3+3
~length SH2-4 SH4+5 B1-5 B2+4 B10-4 B14+5 B15-4 K3+6 K5+7 W1+4 W2+5
~lengthwa SH5-5 B10+9 B14-4 A4+4 A5-7 K2-6 K6+4 W2-5 W3-4 W4+6
~lengthwi B10+4 A4+7 A5-3 K2-7 K6+5
~let N5-3 SH1-6 SH2+6 SH3-3 SH4-5 SH5-6 SH6-3 SH7-4 B2-4 B6-3 K4-3 W1-8 W2-9 W3+13 W4-11 W5-4 X1-6
~lettuc L9-5 D7-5 D8+10
~lie N7-3 SH1-3 SH2-4 SH5+5 SH6+4 B4-3
~lift N6+5 SH1+4 SH2-3 SH4-5 B2+4 A2-4 K3+3 W10-3 L3-4 L5+3 D3+12 L9-4 D6+4
~lin SH6+3 SH8+5 B1+5 B14-4 K1-4 K4+6 L4+5
~linebacker SH3+4
~lingeri N1-3 N5+8
~load A5-3 W3-4 W4+6 D4+5
~loaf L2+6 L5-3 L6-6 D1-4 D2-3
~long SH3+4 B4+5 B5-4 B6-3 B9+4 A5-3 K2-3 W1+8 W2+11 W10-3 W11+4 L2-3 L4-5 L9+5 D5-3
~loo N2-3 N8+4 SH1+3 B9+4 B13+4 A3+7
~loop N3-4 N6-4 SH5-4 A3+6 A4-5 A5-3 D1-3
~lopsid N5-3 SH1-4 SH2-3 SH3-6 SH4-5 SH5-3 SH8+7 W11+4 L9+4 D5-4 D7-3 D8-9 X1-7
~lordosi K2+10 K5-6
~los B3+5 X3-5
~lov SH8+4
~low N1-6 N8+4 SH8+11 B5+7 A2+4 K5-4 K6+6 W12+5 L1+4 L2-3 D8-6
~lowest A1-4 A2+5 D4-5
~lump N3-6 N4-7 N8-4 SH6-3 B4-3 B5-8 B6-4 B7+9 B8-4 B10-4 B14-3 A5+12 K2-4 K7+11 L2-3 D4-4 D5-3
~lunchtim N5-4 N7+5 SH3-4 SH5-5 SH6-3
~madonna SH7-5 B1-3 B4+7 B7-5 B8-4 B12-3 B15-4 A2-3 K2-3 K7-3 W10-3 W12-4 L2-3 L6-4 L7-3 D6-3
~magyar L4-3 L5-5 D3+6 D1-4 D2-3 D5-4 D6-4
~march W6+5
~mark A1+4 L3-5 L7-5
~mash B1+5 B3-6
~massiv X3+3
~material N3-4 N4+4 K7-3 X4+5
~maternit N1-5 N2-5 N7-4 N8-4 SH1-4 SH4-3 SH6-4 SH7-4 B2-9 B3-3 B5-4 B8-4 B9-4 B10-7 B11-4 B14-8 A5-3 K7-4 W4-4 W5-4 W10+8 L2-6 D2-5 X1-3 X3-7
~measur W11+3
~meet SH3-4 SH4-3 SH7+6 A1+3 L3-4 L6+5 D1-3
~middl N8-3 SH4-6 SH8-3 B1-3 B4-4 B5-8 B6+7 B7-5 B10-3 B11-4 B14-3 A1-3 A5-3 K1-3 K2-8 K3-3 W1+7 W2+13 W3+13 W4+13 W5+6 L8-3 D7-3 X2-4 X3-7
~midriff B2-3 B13+12 B14-9 D3+5 X3-5
~mil SH3+5 SH4-3 SH7-3 D1-7
~miniatur N2-4 N5-3 SH2-3 SH4-4 B1-5 B6-4 B11-4 A1-4 K1-5 K4-4 W3-6 W9-3 W10-3 L7-3 D7-4 X2+7 X4-4
~miss B5-3 A4-4 K3-3 K5-4 K6+6 W3-3 W4-4
~missil B4+7 B7-7
~mock X4+8
~mov N7+5 SH5-4 W6+4
~muffin W1-5 W2-4 W3+7 W4-5 W5-5 W10-8 W12-4
~muscular A1-4 L3+8 L4-4 D7-4
~muslin X4+11
~nap N3+4 N8-4 K7+11
~narrow N1-4 N2-4 N3-4 N4-4 N5-4 N6-4 N7-4 N8-4 SH1-4 SH2-5 SH3+8 SH4+6 SH5-4 SH6-5 SH7-4 SH8-4 B2-4 B3-7 B4-4 B5-5 B6+6 B7-3 B8-4 B9-5 B10+3 B11+9 B12-4 B13-4 B14-5 B15-5 A1-4 A2-3 A3-4 A4+5 A5-5 K1+11 K2-8 K3-4 K4-4 K5-4 K6-6 K7-4 W1-3 W2-3 W3-4 W4-4 W5-4 W6-4 W7-4 W8-4 W9-3 W10-4 W11-3 W12-3 L1-4 L2-4 L4-4 L5-4 D3-4 L6-4 L7-4 L8-4 L9-4 D1-4 D2-5 D4-5 D5-4 D6-4 D8-5 X1-4 X2+4 X3-6 X4-4
~natural W1+12 W3-15 W4-10 W5-5 W12-5 D2-3
~nearer B2-3 B4-9 B5-9 B6+10 B7-6 W12-5 X1-5
~neck N1+5 N2+10 N4+5 N5+6 N6+8 N8+4 B11-5 B15+7 K7+4
~neckband N3+3
~necklin N1+11 N3+3 N5+5
~need N5-4 N7-4 SH2-3 SH3-4 SH5+6 SH6+3 SH7-3 B5+6 B6-4 A2+5 W3+6 W5-6 L1+6 L2-4 L7-6 X1-3
~nick SH7+5
~nip W1-4 W3-4 W4+5
~nippl B1+3 B4-3 B6+4 B15+3
~noo N1-3 N2+8 N4-4 N5-4 N6-3 N7-6 SH2-3 SH3-3 SH4-3 SH7-3 SH8-3 B1-3 B5-3 B7-3 B8-3 B12-3 B15-3 A1-5 A2-4 A4-3 K5-4 K6-3 K7-3 W2-3 W4-3 W6-3 W8-3 W9-3 L1-3 L4-4 L6-4 L8-3 D1-3 D4-3 D8-3 X1-4 X2-3
~notch SH7+7 A5-5 L2-4 L3-6 L4-5 L6-4 D2-4 D4-3 D5-3
~obliqu SH1+3 B1-4 B11-4 B15+4 K1-5 K4+10 L4+3
~ok N2-3 SH1+4 SH2-3 X4+3
~open N2+4 N5+4 B8-3 B12+8 A5-4 L3-4 D1-4 D4-4 D6+10 D7+6 D8-3 X3-4
~other D6+3
~otherwi SH1+5 A5-4 D4-4
~outer N6-5 N7-3 SH1+10 SH2+8 SH3-5 SH4-9 SH7-4 D2-6
~outsid SH1-3 SH4-3 B4-4 B5-4 B6+6 L9+4
~outward SH5+4
~oval B1-3 B12+5 B15-4
~overall N3-3 N5-4 N8-4 SH3-3 SH4-3 B1-4 B6-6 B10-5 B11-6 B13-4 A1-3 A4-5 K1-5 W1-4 W3-3 W4-4 L3-4 D3-4 L8-3 D4-3 D5-4 D6-4 D7-4 X1-5 X2+10 X3+9
~overarm N2-3 N4-3 N7-4 SH4-5 SH5-5 B1-3 B2-5 B11-3 A1-3 K1-3 K2-3 K3-4 W1-6 W3-4 W7-4 L1-7 L2-4 L3-7 L4-5 D3-3 L6-3 L7-5 L8-4 L9-6 D1-3 D2+13 D5+6 D6-3 D7-5 D8-4 X2-4
~overhang N6-7 SH1-5 SH2-4 SH3+12 SH4-4 SH5-5 SH6-9 SH7-8 D1-7
~overhead L5+4 D3+6
~overlong SH3+4 B2-3 B4+6 B5-5 B10-3 B14+6 A4-4 K5+7 W2+7 L2-3
~overnight W11+4
~overshoot B4+6 B5-4 B6-6
~oversiz A2-3 W1-3 W2-4 W4-3 D5-3 D6-4 X3+6
~pad N3-6 N4-4 N5-3 N8-4 SH1+10 SH2-7 SH3-8 SH4-4 SH5-4 SH6-3 SH7-3 SH8-4 A1-3 A5-4 K7+5 L1-3 D4-5
~pagoda L3-3 L4-3 D1+5
~parallel W11+5 D8-5
~part D8+4
~peak B1-4 B3-5 B4+6 B5-3 B15-3
~peek B8+4 A2-5 A5-4 W5-3 L3-4 D6+3
~peephol B12+4
~perfect X4+8
~pick K1+4
~pie L4-4 L6+4
~pil N4+5 A4-3 K2-4 K5-4 W1-4 W2+4 W3-4 W4-3
~pimpl B4-8 B5-3 B7+7 W12-3
~pin B4-6 B5-4 B6-5 B7+5 W12-4 D3+6
~pinch SH1+8 SH2-5 B6-5 W3+7
~pinup B4+6 B5-4 B6-4 B7-6
~pit SH1-4 A1+6 A2-5 A5+7 L1+4 L4-5 L7-3 D5-5
~pitch N5-4 N7-3 L4+10 X1-8
~plac B2-5 B5-5 K3-6 W9-4 W10-3 W11+10 D6-4 D8-4
~placket N2-4 B8-3 B12+8
~player SH3+6 SH4-6 SH6-4 B2-4 A5-4
~pleat SH1-3 SH5-5 A4+6 A5-3 L1-3 L2-9 L4-6 L6+10 L7-6 D4-3 D5-3
~plumb W6+5 W7+5 W8-5
~plung B8-5 A2+4
~pocket B1-3 B3+4 B4-8 B5-3 B6-4 B7+5 W12-4
~point SH7+3 B1+4 B4+11 B5+5 B6+6
~pok N8-3 SH2-4 SH3-9 SH5-6 SH6-4 SH7+5 B4+4 B5-6 B6-4 B7-3 B8-8 A1-6 A2-5 A3-5 K4+6 W6-3 W10+4 W12+6 L7-4
~pol L4-3 X1+5
~pooch B7+4 W12-3
~poof L2+3
~pool B13-4 B14+6 A5-4 K2+8
~pop N2-4 B12+7
~popper B3-4 B12+4
~postur N1-4 N2-4 N3-3 N4-4 N5-3 N6-3 N7-4 N8-3 SH1-3 SH2-4 SH3-3 SH4-3 SH5-4 SH6-6 SH7-4 SH8-4 B1-6 B2-3 B3-3 B4-4 B5-3 B6-3 B7-5 B8-3 B9-4 B10-4 B11-3 B12-3 B13-4 B14-4 B15-3 A1-3 A2-3 A3-5 A4-5 A5-4 K1-4 K2-4 K3-3 K4-4 K5+16 K6-5 K7-3 W1-4 W2-4 W3-3 W4-4 W5-3 W6-3 W7-3 W8-4 W9-3 W10-3 W11-4 W12-3 L1-6 L2-4 L3-3 L4-3 L5-3 D3-3 L6-4 L7-3 L8-3 L9-4 D1-3 D2-3 D4-4 D5-3 D6-3 D7-3 D8-3 X1-4 X2-3 X3-3 X4-4
~potato N1-3 SH1-3 B3-4 B8-4 B13-5 A3-3 A4-4 K6-3 W4-5 L2-3 X3+7
~pouch B14+5 W12+4
~pout SH7-4 B8+7 A1-3 A2-5 W12+3
~practic X4+8
~practical N1-6 N2-6 N5+7 N6-4 SH1-3 K7-3
~pregnant N1-4 N2-4 N3-4 N4-4 N5-4 N6-4 N7-4 N8-4 SH1-4 SH2-4 SH3-4 SH4-4 SH5-4 SH6-4 SH7-4 SH8-4 B1-7 B2-3 B3-7 B4-4 B5-3 B6-4 B7-4 B8-4 B9-5 B10-4 B11-4 B12-4 B13-4 B14-4 B15-4 A1-4 A2-4 A3-4 A4-4 A5-4 K1-4 K2-4 K3-4 K4-4 K5-4 K6-4 K7-4 W1-4 W2-4 W3-4 W4-4 W5-5 W6-4 W7-4 W8-4 W9-4 W10+13 W11-4 W12-5 L1-4 L2-4 L3-4 L4-4 L5-4 D3-4 L6-4 L7-4 L8-4 L9-4 D1-4 D2-4 D4-4 D5-4 D6-4 D7-4 D8-4 X1-4 X2-4 X3-4 X4-4
~press B7+3
~pressur SH1-6 SH2+6 SH4-7 A1+3 A5-5 L8+3
~print X2+5
~project D1+6
~prominent N1-3 N3-3 N4-3 N5-4 N6-4 N7-3 N8-3 SH1-5 SH2-4 SH3-5 SH4-5 SH5-5 SH6-4 SH7-4 SH8-5 B2-3 B3-3 B4-3 B5-3 B6-3 B7-3 B9-3 B10-3 B12-3 B13-3 B14-3 B15-3 A3-6 A4-3 A5-3 K1-4 K2-3 K3-5 K4+10 K5-4 K6-3 K7-3 W1-3 W2-3 W4-3 W5-3 W6-3 W8-3 W10-3 W11-3 W12-3 L1-3 L2-4 L4-3 L5-3 D3-3 L6-3 L9-3 D1-3 D2-3 D4-3 D5-3 D6-3 D7-3 D8-3 X1-3 X3-3 X4-3
~pucker SH3-3 SH7-4 B4-7 B5-5 B6-3 B7+7 A1-3 A2-3 L2-4 L6+9 L7+5 X2-3
~puddl B14+4 K2+5
~puff B4-7 B7+4 W12+4 L1-6 L2+11 L7-5 D2-3
~pull N2+3 N8+4 SH4+3 SH5+3 B11+5 K3+3 K4+4 W7+4 L1-4 L4-5
~push N3-9 N8+8 SH1-3 SH2+5 SH4-3 K1-4 K4+4 K7+5 L3+3
~put L5+4 D3+4
~radiat N2+4 B1+8 B2-4 B4-3 B15-7 K4-4 D2-4
~rai SH3-4 B4-3 B5+4 A2+10 D2-3
~reach B4+5 B5-3 B6-7 K1+5 L4-5
~rear N3+5 N7-4 SH5+5 A3+5 K6+3 W9+6
~restrict K1+4 K3-3 W3+3 W9+6 L3+5 D3+7 L8-4 D2-6 D7-5 X2-3
~rex A1-4 L3-4 L5+6 D3+6 D1-4 D6-3
~rib B13+7 B14-8 A2+6 A5-3 W1+7 W2-6 W3-3 W4-4 D4-5
~ribcag B13+12 B14-7 W4-3 X3-9
~rid N1-3 N3-6 N7+5 K3-4 W1+8 W9+11 W10-7 W11-9 L1-4 D3-10 L8+4
~ridg N2-3 N3-3 N4+5 K7-3
~rim D7+4
~rip K1+5
~rippl N3-3 N4+4 SH3-4 SH7-3 B9+5 B11-3 B14+3 A1-5 K1-3 K2+5 K3-4 L1-4 L6+8 L7+7 L9-4 D7-4 D8+7
~ris K3-4 W1-3 W9-3 W10+5 L2+5 D3+10 L6-3 L9+11 D1-4
~roll N4+5 SH8+6 B10+4 A5-6 K2-4 K7-6 W1-7 W3+6 L2+6 L4+3 D2-4
~room B3+5 B9-7 B10+3 B11-5 A4+6 K1-3 K2-6 K5-5 K6+6 W1-5 W2-5 W4+8 W5-3
~rotat L4+9 L7-3 X1+6
~round N2-3 N4-6 K1-3 K3+12 K7+4 W9-3 L2-3 L3-4 L4-3 D3-3 L9-4 D6-4 D7-6 D8+4
~rub B8-5 B11-6 A5+7
~rubber L9-3 D7+5 D8-3
~ruck N3-6 N4+9 B8-3 A5+4 K7-8 W2-4 W9+5
~ruffl W11-4 D3-5 L9-4 D1-5 D2-6 D5-6 D6-3 D7-4 D8+9
~rugb SH3+6 SH4-6 SH6-4 B2-4 A5-4
~run N7-3 SH6+3 B6-4 B8-3 B10+5 K2-4 K6+4 W2-3 L4-4 X1+6
~s B4+5 B5-3 B6-3 B7-6 W6-4 W7-4 W8+9
~sack N1-3 SH1-4 B3-5 B8-4 B10-3 B13-5 A2-3 A3-3 A4-4 K6-4 W3-3 L2-3 X3+7 X4-3
~safet B12+4
~sag SH1+4 SH8+4 B3+3 B14+3 A4-6 K5+4
~sampl X4+9
~sausag SH3-3 B3-5 A5-4 K2-3 K7-4 D7-3 X2+6
~scant SH2-3 SH3-4 SH4+6 B1-8 B11+8 K1+6 K3-4 X2-5
~scoop N1+3 N2-5 N4-4 N5-7 N6-7 N7-3 N8-4 SH1-3 B8-4 A5+7 K7-4
~scrap A5+6
~scratch N2-3 N8-3 SH4-5 SH6-3 B8-4 B10-4 B11-7 A1-7 A5+10 W3-4 D7-4
~scrunch N3-4 N4+6 A5+5 K7-5
~scy SH3-4 SH7+6 B8+9 A3-4 L6+4 L7+7 D6-4
~seam N6+5 SH3+8 SH4+3 SH5+5 SH6+10 W6+6 W7+5 W8+6 L7+4
~seat W9+5
~see N1+5 N2-4 SH3-3 B8+3 B12+3 L3-5 L9-4 D6+14 D7-3
~set L4-4 L6+5 D5-5
~sew B7+5 L1-5 L2-5 L6+5
~shallow L1+7 L2-6 L6-6
~shap B1-6 B2+3 B11-4 B15+3 A2+5 K4+4 W8+6
~shelf B8-3 K1-5 K2+3 L5+7 D3+9 D6+3
~shelv D1+6
~shift N7+4 N8+10 SH6-4 D5-4
~shirt N1-3 N2-4 N3-4 N4-3 N5-6 N6-4 N7+12 N8+10 SH1-4 SH2-4 SH4-8 SH5-7 SH6-6 SH7-4 SH8-4 B1-4 B2-4 B3-3 B5-3 B7-4 B8-3 B9-3 B10-3 B11-4 B12+5 B14-3 B15-3 A3-5 A4-6 K1-7 K2-4 K4-5 K5-5 K6-3 W1-4 W5-4 W6-5 W7-6 W8-3 W9-4 W10-3 W11-5 W12-3 L2-4 L4-4 L5+6 D3+10 L6-3 L9-3 D1-3 D2-4 D5-7 D6-3 X1-4 X2-4 X3-4
~sho N1+4
~shoot B2+7 K3+3
~short SH4+6 SH6-3 B2+7 B5-3 W1+13 W3-4 W4-4 L2-3 D3-4 L9+3 D5-3 D7+4 X2-4 X3-3
~shorten B2-3 W1-4
~should N7-3 N8-7 SH6+9 B1-5 B4+6 B7-5 B10-6 B13+3 B14-5 A4-4 W2-3 W3-4 W4-3 W5-3 W8-4 W12-8 L1-4 L2+4 L4-3 D1-6 D6-3 X1-3
~shoulder N5+4 SH1+10 SH2+13 SH3+13 SH4+12 SH5+11 SH6+7 SH7+3 SH8+13 K4+4 X1-3
~show N5+10 B5-3 B8+7 A2+6 W10-6 D6+5
~shrink N2-5 N3-4 SH2-3 SH4-5 SH7-3 B1-6 B7-5 B11-5 B13-3 A1-5 K1-5 K4-3 K7-3 W3-5 W9-4 W10-3 L3-4 L5-3 D3-4 L7-4 L8-4 D7-5 X3-4 X4+9
~shut N1+4 N2-4 N5-3
~sid SH8+7 B6+4 W6+7 W7+7 W8+8
~sidewa B8-3 B11-5 A5-4
~silk X4+10
~sink B3-3 B9+5
~sit N2+8 B4-3 W1+4 W2+3 W3-3 W9-3
~skew N8-3 SH8-5 B2-3 K3-3 W5-3 W6-3 W7-3 W8-4 W11+4 L4-5 L9-7 D5-5 D8-4 X1+12 X2-4 X3-4
~skim W3-3 W4+5
~skimp N2-3 SH2-3 SH3-6 SH4+7 B1-9 B2+4 B11+6 B15-4 K1+4 K3-4 X2-7 X3-4 X4-3
~skin L1-4 L2-3 L3+7 L4-6 L6-4 L9-3 D1-5 D5-3 D6-5
~skirt W9+7
~slack SH1+4 B3+4 B8+4 B9+4 B13+4 A3+4 K2-5 W4+4 L2+4
~slant SH2+4 SH8+4 A1-3 K1-5 K4+3 W5+4
~slantwi B11-5 B15+5 A2+3 K4+4 L4+3
~sleev L1+5 L2+6 L3+5 L4+7 L6+7 L7+5 L9+5 D1+8 D2+3 D5+4 D6+6 D7+6 D8+5
~sleevehead A2-4 L1+9 L2+8 L6+7 D1-4 D8-3 X3-3
~sleeveless A3+4
~slid N5+8 N7+9 N8+5 SH5-6 SH6-4 SH8-4 W7-5 L1-3 L2-5 L4-3 L6-4 L7-3
~slip N5+10 N7+7 N8+5 SH3-10 SH4-4 W7-5 L4-4
~slop N1-4 N2-4 N3-4 N4-3 N5-4 N6-6 N7-4 N8-4 SH1+13 SH2+12 SH3-13 SH4-7 SH5-8 SH6-10 SH7-6 SH8-6 B1-3 B3-4 B4-4 B5-4 B6-4 B7-4 B8-4 B9-4 B10-4 B11-4 B12-4 B13-4 B14-5 B15-4 A1-3 A2-4 A3-4 A4-4 A5-3 K1-5 K2-4 K3-4 K5-4 K6-4 K7-3 W1-5 W2-6 W3-6 W5+8 W6-4 W7-4 W8-4 W9-4 W10-4 W11-4 W12-4 L1-3 L2-4 L3-4 L4-4 L5-4 D3-4 L6-4 L7-5 L8-4 D1-4 D2-4 D4-4 D5-4 D6-4 D7-4 D8-4 X1-8 X2-4 X3-5 X4-4
~slump N5-4 N7-4 N8-4 SH2-3 SH3-7 SH4-5 SH5+6 SH6-3 SH8-4 B2-5 B5-4 B10-3 B11-4 B13-7 B14+10 A2-4 K3-3 K5-3 W5-7 W10-4 W11-3 D1-3
~small N7-3 SH3+7 B3+9 A1+6 L2-4 L6-4 D7+4 X2+13 X3-5
~smooth SH7+6 B4-4 B5-6 B6-5 B7+11 B14+5 K2-6 K6-4
~snak W6-4 W8+7
~snap B1-3 B12+10 K1-5 X2-3
~snug B1-4 A1+4 K2-3 K4-3 K5-4 W3+5 W4-4 L7-3 D2-3 X2+8 X3-3
~soldier K5+3
~somebod L1+3
~sooner B4+13 B5-7 B6-13 B7-3
~sor A1+4
~span B1-7 B3-8 B6+10 B13-5 B15-3
~spar B3+3 B9+5 B13+4 A4+5 L2+5
~spik SH1-5 SH2-7 SH3-7 SH4-6 SH5-4 SH7+9 B4-6
~spin N4-5 N5-3 SH7-3 SH8-5 A4-3 K2+6 K3-3 K5-6 K7+9 W8-3 X1-3
~spiral SH5-3 SH6-3 L3-5 L4+9 L9-3 D8-4 X1+8 X3-3
~split A4-3 K1+6 K3-4 K5-3
~sport B1+8 X2-7
~spread B12+10
~squash B1+13 B3-6 B11-6 X2-9
~squeez N2+4 SH4-3 B1+5 B3-4 B11-3 W3+6 L3+8 L7-5 D2-4
~squirrel N1-4 N3-4 N4-3 N6-3 N7-3 N8-3 SH1-5 SH5-3 SH6-4 SH8-5 B1-3 B2-3 B3-3 B4-3 B5-3 B6-3 B7-3 B8-3 B9-3 B10-3 B11-3 B12-4 B13-3 B14-3 B15-3 A2-4 A3-5 A4-3 A5-3 K2-3 K3-3 K5-3 K6-3 K7-3 W1-3 W2-3 W3-3 W4-3 W5-3 W6-3 W7-3 W8-3 W9-3 W10-3 W11-3 W12-3 L2-4 D1-9 D4+8 D7-3 D8-3 X1-3 X3-3 X4-5
~squish B1+4 B14-3
~stack A5-3 K2-3 W1-4 W2+6 W3-6 W4-5 D4-3
~stand N2-3 N4-3 SH4-4 B3+5 B5-4 B6-5 B8+6 K1-7 K6+3 W4+5 L2+4 D1+8
~start N5+4 SH3+8 SH4-5 B9-3 B10+6 B14-5 K1-4 K4+3 L1-6 L2-3 L3-5 L4-6 L9-4 D2-3 D5-4
~steep N1-3 N2-4 N5-4 N6-3 SH1-13 SH2+11 SH3-9 SH4-5 SH5-4 SH6-3 SH7-4 SH8-4 B2-3 B4-3 B5-4 B6-4 B7-3 B9-3 B10-3 B11-3 B14-3 B15-3 K3-3 K4-4 K5-3 W1-3 W3-4 W5-3 W6-3 W7-3 W9-4 W11-3 L7-5 L9-4 D1-3 D2-3 D5-3
~stick SH4-5 SH7+5 B4-4 K4+5 D1+7
~stitch B4+3
~stomach W10+6
~stoop N5-3 SH3-7 SH4-6 SH5-4 SH7-3 A4-5 K1-4 K3+12 K5-4
~stop SH3-5 SH4+7 SH5-4 SH6-6 B4+9 B5-6 B6-12 W2-6 W3-4 W4-4 W12-5 L1-3 L3-4 L4-3 L5+10 D3-12 L6-4 L7-3 L9-5 D6-4 D7+4 D8-6
~str B15+3
~straight SH2+8 B3-6 B10+4 B13+5 B14-5 K1-7 K2-3 K5+7 K6+4 W4-3 W5-3 W8+4 L4-6 D5-4 D8-5 X1+4
~strain N4-3 SH2+3 B6-4 B11+3 B12+6 K4+3 W3+6 D2+4 D7+3 D8-5 X2+7
~straitjacket B1-4 B11-5 K1+7 L3-4 L8-3 X2-4
~strangl N1-5 N2+12 N4-4 N5-6 N6-3 N8-4 SH1-3 SH3-4 SH4-3 SH5-3 SH7-4 B2-4 B5-3 B8-4 B10-3 B14-5 A1+7 A2-4 A4-3 A5-3 K1-3 K7-5 W1-3 W10-3 L1-3 L2-4 L3-5 L4-5 L5-3 D3-4 L6-4 L7-4 L9-5 D1-5 D2-5 D4-4 D6-3 D8-4 X1-4
~strap N1-4 N2-4 N5+15 SH6-3 B1-4 B2-5 B8-5 B10-3 B11+6 B14-4 A2-3 K1-3 W3-3 D6-6 X2-3
~stretch B1+6 K1+8 W3+5 D3+4 L9-6 D7-10 D8+12
~stuff B3-5 A5-4 K2-3 L2-3 X2+6
~surplu N1+6 N5-6 K2-4 K5+6 W4+3 L2+6 L6-3
~swa N3-3 N7-3 A4-3 K1-4 K2+8 K3-5 K6-5 D5-3
~swag A2-3 K5+4 D4+4
~swallow N1-3 N2+5 N4-3 N5-3 N6-3 N7-5 SH3-4 SH4-4 B5-4 B8-3 B9-3 B11-3 A1-4 A2-3 A3-3 K5-4 K7-3 L2-3 L5-5 L6+5 L7-5 D4-4 D7-3 D8-3 X1-4 X2-3 X4-4
~swamp N1-5 N2-3 N3-4 N5-3 N7-3 N8-4 SH1-5 SH8-4 B3-7 B4-3 B8-6 B9-3 B10-4 B12-3 B13-7 B14-4 A2-5 A3-5 A4-6 K2-4 K5-4 K6-5 K7-3 W4-8 W7-3 W8-3 W9-3 W11-3 W12-3 L2-5 L3-3 L4-3 L5-3 D3-3 D5-4 D6-4 X1-3 X3+11 X4-4
~swayback N2-3 N5-3 SH2-3 SH3-3 SH4-3 SH6-3 B1-3 B6-3 B15-3 A1-3 K2+10 K3-4 K6-5 W6-3 W8-3 W11-3 L3-3 L9-3
~swim B3-3 B13-4 K6-3 W3-5 W4+4 X3+7
~swimmer SH3-3 SH4+6 SH6-3 B6-3 B11-6 B14-4 A5-4 K1-4 X2-4
~swing N8+8 SH5-3 SH6-8 W10+5 L4+8
~swivel X1+5
~t A1-4 L3-4 L5+6 D3+6 D1-4 D6-3
~tail A3-3 K3+4 W11-6
~tak W3-7 W4+8
~taut B11+6 L1+5 L7-4
~tear K1+4
~tell N1-3 SH8+6 B3-3 B9-5 B10-3 L9-4 D5-3 X1-4 X3-4
~tension SH2+5 SH4-4 B11+3 B15+4 K1-4 K4+7 L1-5 L2-3 L6-6 L7+6
~tent N1-5 N3-4 SH1-6 B3-3 B8-6 B13+3 A3-4 K6-3 W4-6 D1-3 X3+9
~thigh W2-3 W9+11 X2-4
~throat N1-5 N2+12 N7+5 X3-3
~throttl N1-5 N2+11 N4-4 N5-4 N6-4 N7-8 N8-4 SH1-4 SH2-3 SH3-4 SH4-4 SH5-3 SH6-3 SH7-3 SH8-5 B1-3 B2-3 B3-5 B4-3 B5-4 B6-3 B7-3 B8-5 B9-4 B10-4 B11-3 B12-4 B13-5 B14-4 B15-3 A1-5 A2-5 A3-4 A4-5 K2-4 K4-3 K5-4 K6-4 K7-4 W1-3 W2-3 W4-6 W5-3 W6-4 W7-3 W8-4 W9-4 W11-3 W12-3 L1-3 L2-4 L3-3 L4-4 L5-3 D3-4 L6-4 L7-3 L8-3 L9-3 D1-4 D2-3 D4-3 D5-3 D6-3 D7-3 D8-4 X1-5 X2-4 X3-7 X4-4
~through N7+7 SH5-3 B8+9 A2-11 A4-4 K1-4 K3-5 K5-3 L7-3
~thumb N5-3 N8-6 SH3-3 SH5-5 SH6+7 B6-4 B10-7 B13-3 A4-6 W6-5 W8-3 X3-3
~tie SH3-4 L4-5 D3+8 D1-5 D2-8 D4-5 D5-8 D6-3 D7-4 D8-5
~tight B9-3 B15+4 K1+6 D2+6 D7+6 X2+7
~tilt N8+3 K2-4 W1-3 W5+4 W7+5 W8-4 L4-4 L9+8 D7-6 D8-5
~tin B7+6
~tip N8+4 SH1+4 SH2+7 SH4-4 SH6+5 B5-4 B7+9 W12+4
~toe A5-4 W6+5 W7-3 W8-4
~together N2-3 B1-5 B4-6 B5-7 B6+10 B7-3 B11-6 K1+5 L3-3 D7-3 X2-5
~toil X2-3 X3-4 X4+8
~top SH4+6 SH7+7 B8-4 B10-4 B12-3 B14-3 K7+4 W9-4 L2+7 L3-7 L4-5 L7+4 D1-3 D2+8 D5-4 D7-4
~torso SH3-3 SH4-3 B2-4 B4-4 B9-4 B14-4 K3-4 K5-4 W1+8 W2+8 D3-3 L7-5 L9-4 X1-3
~touch N3+4 N6+3 SH2+4 SH4-3
~toward SH1+4 B8+4 A5-7 K4+6 W2-4 W5+7 W6+6 W7+3 L4-6
~tram L4-4 L6-3 D6+5
~trampolin B1+4 B11-4
~travel N7+5 SH5-4
~travell N5-4 N7+5 SH3-4 SH5-5 SH6-3
~tuck A5-3 L1-7 L2-15 L4-4 L6+16 L7-7 D5-6
~tuft B5-5 B6-4 B7+5
~tug N7+10 N8-9 SH4-3 SH5-3 W5-4 L1+4 L3-3 D5-4
~tum B7-3 W10+8 W12+4
~turn N5+6 SH3-4 SH8-7 L3-4 L4+4 L9-3 D8-3 X1+4 X3-3
~turtleneck N2+3 N5-4
~twist W6+5 W8-5 D8-3 X1+13 X3-3
~tyr N1-3 N2-6 N4+8 N5-3 A5-3 K3-4 K7-7
~under B8-4 B13+8 B14+9 A1+7 A2+6 A5-4 D4+10
~underarm A1+8 A5-5 D4+4
~underboob B5-6 B13+7 B14-5 W1-5 X4-3
~underbust N2-4 SH4-4 B1-4 B11-3 B13+10 B14-7 A1-3 K1-3 W3-3 D7-3 X2-7
~underwear B8+4 A2+4 D6+5
~undon B12+3
~undulat L2-4 L6-5 L9-4 D6-4 D7-5 D8+8
~unequal D3-4 L9-6 D1-4 D2-4 D5+7 D8-5 X1-5
~uneven SH1-4 SH2-4 SH3-3 SH8+8 B15-4 W11+5 L4-5 L9-3 D2-4 D5+6 D6-3 D7-5 D8+9 X1-5
~uniboob N2-4 SH2-3 B1+7 B7-4 B11-4 A1-4 A3-3 K1-6 W3-4 W9-3 L1-4 L3-4 L8-4 D7-4 X2-6
~unlevel L9+4 D8-4
~unlik X4+4
~unsnap B3-4 B12+4
~untuck D3+4
~upper B10+10 B11+4 A4+7 K3+11 K5+8 L3+7
~upright SH5-4 B9-4 B10+8 B13-3 A4+7 A5-4 K2-7 K5+8 K6+5 W3-3 W4+5
~upsid SH3-5 L1+6 L3-6 L4-6 L6-4 D1-4 D6-4
~used X4+4
~v N1+9 N2+4 N6-4 SH3-4 B1-5 B2+4 B11-4 B15+4 K4+3 L1+7 L3-4
~vanish B7+5 W10-4
~var W11+3
~veer W6+3 W8-3
~version X4+11
~vertebra N2-3 N3-5 N4-5 N5-3 N8-5 K7+6
~vertical B8-5 B10+11 B13+3 A3-4 A4+4 A5-5 K2-6 K6+4 W2-3 X3+3
~visibl SH6+4 D6+6
~wad A2-4 D4+4
~waist K2+5 K6+5 W1+10 W2+5 W3+11 W4+9 W5+4 W12+3
~waistband W1-5 W2+3 W3+3 W4-4
~waistlin W2+5 W3+5 W4+5 W9-4
~wander N7+5 W8-4 X1+4
~want N1-6 N2-6 N4-4 N5+5 N6-4 N7-4 SH3-7 SH5-4 SH6-4 SH7-5 SH8-4 B2-4 B3-3 B4-5 B5-5 B6-5 B7-4 B9-3 B12-3 B13-3 B15-4 A2-4 A3-3 A4-3 K2-3 K4-3 K5-3 K6-3 K7-5 W1+3 W2-4 W4-3 W6-3 W7-3 W8-3 W9-3 W10-3 W11-3 W12-4 L1+5 L3-6 L4-7 L5-4 D3-4 L6-6 L7-4 L8+4 L9-5 D1+3 D2-8 D4-4 D5-5 D6-6 D7-3 D8-4 X1-4 X3-3 X4-3
~warp L4-3 X1+5
~wash N1-4 N2-5 N3-5 N4-4 N5-3 N6-3 N7-4 N8-4 SH1-3 SH2-4 SH3-5 SH4-4 SH5-3 SH6-3 SH7-4 SH8-3 B1-5 B2-4 B3-3 B4-4 B5-4 B6-4 B7-5 B8-4 B9-3 B10-3 B11-5 B12-3 B13-4 B14-4 B15-4 A1-4 A2-4 A3-3 A4-3 A5-4 K1-5 K2-3 K3-3 K4-4 K5-4 K6-4 K7-4 W1-3 W2-3 W3-5 W4-3 W5-4 W6-4 W7-4 W8-4 W9-4 W10-4 W11-4 W12-4 L1-4 L2-3 L3-4 L4-4 L5+7 D3+11 L6-4 L7-4 L8-4 L9-3 D1-4 D2-4 D4-3 D5-3 D7-4 D8-4 X1-4 X2-9 X3-4 X4+13
~wav W8+5 L4-3 L9-7 D7-5 D8+9
~wedg N2-3 SH1+4 SH2-3
~weigh N7+5 N8-4 W5-5
~whiff SH8-5 W5-3 W8-4 W11-6 L9-6 D5-5 X1+7
~whisker B1+3
~wid N1-3 N2-3 N5+5 N8-3 SH3+7 SH4+9 B3-6 B5-3 B6+5 B9-6 B10+6 A4+6 K3-3 K5-4 W1-4 W2-7 W3-4 W4+6 D3-3 L7-3 L9-4 D1-3 D2-4 D5-5 D6+9 D7-4 D8-4 X2-4 X3+4
~widow K7+6
~width N8-3 SH2-3 SH3+5 SH5-3 SH6+3 B6-5 B10+6 A4+5 K3-6 K5-6 K6+6 W2-4 W4-6 L3+5 X2-4 X3-8
~wind L4-6 X1+11
~windpip N2+3
~wing N2-4 N3-3 N5-4 SH1+7 SH2-4 SH3-7 SH4-6 SH5-3 SH6-3 SH7-7 SH8-6 B1-3 B8-5 B11-3 A1-8 K1-5 W4-3 L1-3 L2-6 L4-4 L6-3 L7-6 D1+19 D2-4 D5-3 X2-4 X3-3 X4-5
~wonk W11+9 L9-5
~work N2-4 N7+3 N8-4
~worker SH5+3
~wrap X1+4
~wrinkl B8-3 B9+4 B13-3 A5+3 K2+6 L4+5 L7+5 D5-5 X4+4
~wrist W11-8 L9+9 D7-4 D8-4
~wrung X1+5
~yank N7+7 N8-7 SH3-3 SH4+6 W6-3 L1-6
~yawn B8+3
~zigzag W8+9
~zip W3+8 W4-7
`
