/**
 * Weights of the finder, in tenths: a feature, then the complaints it speaks for or against.
 * Written by scripts/finding/learn-weights.ts from our own phrases; not edited by hand.
 */
export const WEIGHTS = `N1 N2 N3 N4 N5 N6 N7 N8 SH1 SH2 SH3 SH4 SH5 SH6 SH7 SH8 B1 B2 B3 B4 B5 B6 B7 B8 B9 B10 B11 B12 B13 B14 B15 A1 A2 A3 A4 A5 K1 K2 K3 K4 K5 K6 K7 W1 W2 W3 W4 W5 W6 W7 W8 W9 W10 W11 W12 L1 L2 L3 L4 L5 D3 L6 L7 L8 L9 D1 D2 D4 D5 D6 D7 D8 X1 X2 X3 X4
!burst K1+4 L5-3 D3-3
!pucker L3-3 L5-5 L6+5 L7-4
!show W10-5 D3+4
Armhole SH1+4 SH7+7 B8+9 A1+14 A2+15 A3+6 A5+6 L7+7 D4+8 D6-3
Armhole&Away SH7+6 B8+15 B12-4 A1-9 A2+7 A3+7 A5-4 L7-3 D4-5
Armhole&Back B8-7 A2-4 A3+19 A4+4 K4+4
Armhole&Bust B1-6 B3-5 B5-4 B8+10 B15-4 A1-4 L7-3
Armhole&Chest B11+4 A5-3
Armhole&Crooked SH7+7 A1-5 L1+4
Armhole&Dart SH1-6 B4-7 B6+7 B7-7 B8+3 B10-4 A1-8 A2-7 W12-3 L1-3 D4-6
Armhole&Down SH1+4 SH8-3 B8-7 B14-3 A1-6 A2+14 W2-4 W5-3 L1-4
Armhole&Folds SH1+5 B10+4 A1-4 A4+4 A5+9 L4-5 L7+4 D4+12 D5-4
Armhole&Hem A2+5 A5-3 W9-5 W11-5
Armhole&Hip A2+5 W9-5 W11-4
Armhole&Loose B6-3 B8+7 A1-4 A2+11 A3+6 A5-4 L2-3 L6+4 D4+9 X3-8
Armhole&Lumps B7-4 B8-4 A1-7 A2-7 L6-8 L7+12 D4+3
Armhole&Neck N1-3 N2-4 N5-5 N6-5 SH1+9 SH3-4 SH4+12 B8-3 A1-4 A2-5 A5+4 L7-5 D4-5
Armhole&Shoulder SH1-6 SH2-4 SH3+4 SH4+5 SH7+13 A1-6 A2-5 L1+4 L7-3
Armhole&Sleeve A1-8 A2-8 L2-4 L4-4 L6+4 L7+11 L9+3 D5-4
Armhole&Tight B11+4 A1+23 A2-6 A5+5 D4-4 X2-4
Armhole&Travels N5-4 N8-3 SH1+3 SH4-4 SH8-5 B4-3 B8-4 B10+3 A1-3 A2-4 A5-5 K4+4 L7-3
Armhole&Up SH7-5 B2-7 B6-5 B7-3 B8-5 A1+10 A2-11 A3-3 A5-3 K3-6 W1-7 L1-8 D3-4 L6-6 L7+6 L8-4 L9+6 D4-8
Armhole&Waist SH7-4 A1-7 A2+8 W1-6 W2-4 W3-6 W4-7 D2-3 D4-4
Away N1+8 N5-3 N6+4 SH1+3 SH2-3 SH3-3 B8+9 B12+8 A3+4 W3-4 L3-3 D1+9
Away&Back B8-6 A3+15
Away&BackNeck N3+11
Away&Belly D3+3
Away&Bust B1-7 B2-3 B3-4 B4+4 B5-5 B6-5 B12+5 B13+5
Away&Chest N1+8 N6-3
Away&Dart B4-4 B6-6 W4-3 W12+12 D1-5
Away&Down B4-6 B8-4 A2+4 W2-3 W12+4
Away&Folds N6-4
Away&Hem K3+3 W9-3 W10+8 W11-6 D1-5
Away&Hip W9-4 W12+5
Away&Loose B8-6 W4-3 D1-3 D6+3 X3-4
Away&LowBack B8-3 A3-3 K2-8 K3-6 K6+9 W4-6 D1-3
Away&Lumps B4-5 B7+6 W12-5
Away&Neck N1+13 N2-4 N3+6 N6+11
Away&Shoulder N1-4 N5-4 N6+10 SH1+12 SH4-6 SH5-4 SH6-3 D1+5
Away&Sleeve N1-6 N6-3 SH3-3 B8+5 B12-7 A3-3 L1-6 L2+6 L3-9 L4-6 L7-3 L9-8 D1+17 D2-8 D5-6 D6+4 D8-6
Away&Tight B1-6 B4+4 B6-4 W3-6 W4+5 D1-5 D2-6 D7+5
Away&Waist N1-5 N6-3 B2-4 B8-6 B12-4 A3-4 K2-7 K3-6 K6+8 W1-5 W2-7 W3-9 W4+10 W5-6 W10+5 D1-5
Back N7+5 SH5+4 A3+8 A4+10 K1+12 K3+9 K4+4 K5+10
Back&BackNeck N3+5 K3-5 K7+4
Back&Bust B1-3 B15+4
Back&Crooked N7-4 K1-4 K4+4 K5-5 W6-4 W8-3 X1+5
Back&Down N2-4 N3-4 SH3-4 SH5-3 B4-3 B14-5 A4-10 K1-10 K2-4 K5+13 K6-3 W2-7 L9+3
Back&Folds N4+5 B10-3 A3-3 A4+3 K1-4 K5+11 D5+5
Back&Hem N7-3 A4-5 K1-5 K3+9 K5-5 W7+3
Back&Hip W7+5 W9-5
Back&Loose A3+7 A4+17 K1-4 K3-5 K5+5 K6+4 W4-7 D5+4 X3-7
Back&LowBack K2+5 W4-3
Back&Lumps B1-3 B4-3 B7-3 B15+4 K1-4 K3-4
Back&Neck N2-5 N3+5 N4+6 K3-5
Back&Shoulder SH1-3 SH3-8 SH4-7 SH5+15 SH6-7 A4-5 K1-4 K3-5 K4-3
Back&Sleeve N4-3 N7-4 SH3-4 SH5-4 K3-6 K4-3 K5-10 W7-3 L1-4 L2-6 L3-4 L4+5 L6-5 L9+5 D1-4 D5+4 D6-4
Back&Tight N8+4 B1-4 B11-3 A4-6 K1+22 K4+8 K5-10 W3-3 X2-5
Back&Travels N3-3 N5-4 N7+9 K3-4 K5-4 W6-4 W7+6 L4-3 D5-5
Back&Up N3-6 N4-4 N7-4 SH4-5 SH5-4 A4-4 K1-6 K3+15 K5-4 K7+3 W1-6 W9-5 D3-3
Back&Waist N3-4 N7-3 A4-9 K1-5 K2+4 K3+3 K4+5 K6+7 W1-4 W3-7 W4-10 W5+4
BackNeck N2-4 N3+15 N4+6 N6-3 N7-3 N8+5 K7+17
BackNeck&Crooked SH7-3 K7+6 W8-5 X1-3
BackNeck&Down N3-4 N8+5 K5+3 K7-4 W5-4
BackNeck&Folds N3-4 N4+15 K7+3
BackNeck&Hem K7+3
BackNeck&Hip K7+3
BackNeck&Loose N3+9 N5+3 K5-3 K7-5
BackNeck&Lumps N3-3 K7+6 W12-4
BackNeck&Neck N3+14 N4+6 N8+5 K7+7
BackNeck&Shoulder N3-4 N5+3
BackNeck&Tight N3+3 N4-3 N8+3 B1-4 A1-3 K7+5 W3-3 X2-7
BackNeck&Travels N2-3 N3-5
BackNeck&Up N3-11 N8+14 B2-5 K3-6
Belly N2-3 B1-3 B2-6 B9-3 A1-3 K1-3 K2-3 K5-3 W3-3 W6-3 W7-4 W9-3 W10+23 W11-4 L3-3 X2-4
Belly&Hem W10+4
Belly&Tight B1-3 A1-3 W10+17 L3-3 X2-5
Belly&Travels W5+4
Belly&Up W10+6
Belly&Waist W3+4 W5+3 W10-5
Bust B1+13 B3+19 B4+6 B5+7 B6+8 B14-3 B15+3 W3-3 X2-3
Bust&Chest B5+5 B9+3 B11-6 B15-5
Bust&Crooked B4-4 B6+3
Bust&Dart B1-4 B3-4 B4+9 B5+3
Bust&Down N5-3 N8-3 SH8-4 B1-7 B4-4 B5+5 B6-3 B13+5 B14-4 A2-3 W5-5
Bust&Folds SH8-4 B3+10 B4-5 B5-5 B6-5 B10-3 A5-5 K2-3 W8-4
Bust&Loose B1-6 B3+17 B4-4 B5-5 B6+7 B10-4 A4-3 W4-3 X3-7
Bust&Neck N2-6 N5-4 B1-8 B15+12
Bust&Shoulder N5+5 SH2-5 SH4-7 SH6-4 SH7-4 B1-10 B2-4 B3-4 B5-4 B6-3 B15+11 D2-4
Bust&Tight B1+16 B6+7 B15+5
Bust&Travels B1-3 B5-4 B7-4
Bust&Up B1-4
Bust&Waist B1-4 W3-6 W4+5
Chest N7-3 N8-3 B1+4 B3+5 B4-3 B5+3 B9+18 B10+9 B11+11 B14-3 B15+5 A4-3 X2-4 X3-3
Chest&Crooked B11-4 B15+6 W6-3 W8+4
Chest&Dart B4-6 B5+8 B6+4 B7-6 B9-7
Chest&Down SH3-3 B1-5 B3-4 B4-4 B9+16 B10-6 B11-7 B14-8 B15-3 K5-5 W2-6
Chest&Folds SH2+5 B9+13 B10+5 B11-6 A4-3 A5+5
Chest&Loose N5-3 B1-5 B3+8 B9+9 B10+13 B11-3 B13-4 A4-5 W4-3 X3-7
Chest&Lumps B4-5 B5+4 B7-4
Chest&Neck N1+8 N6-3
Chest&Shoulder N5-3 SH1-4 SH2+9 SH3-7 SH4-5 SH5-5 SH6+8 SH8-3 B1-4 B9-10 B10-4 B11-5 B15-3 D2-3
Chest&Tight B1+9 B3-4 B9-16 B10-10 B11+17 B15+9 K1-4 W3-3 L3-4 X2-6
Chest&Travels N5-4 N7-3 SH3-4 SH5-3 SH6+5 B5-3 B6+3 B10-3 X3-3
Crooked SH3-4 SH6-3 W8+7 W11+5 L4+9 L9+7 X1+19
Crooked&Down SH2+5 SH3-5 K3+3 K5-3 W5+5 L9-5 D8+7
Crooked&Folds SH8-5 K2-3 W5-5 W8+6 L4-4 L9-4 D5+7
Crooked&Hem W9-4 W11+12 X1-5
Crooked&Hip W9-6 W11+5
Crooked&Loose SH1-4 SH2+4 SH3-5 SH6-3 SH8-4 B13-4 W2-3 W4-7 W5+6 L4-4 D5+4 D8-4 X1+9 X3-7
Crooked&LowBack K2-4
Crooked&Neck N5-4 SH8+4 L1-4
Crooked&Shoulder N5-4 N6-3 SH1-5 SH2+4 SH3-7 SH4-8 SH8+10 B13-3 W5-5 W6-4 W8-3 W11-4 L9-5 X1-8
Crooked&Sleeve W11-6 L4+11 L9+13 D5+4 D6-4 D7-5 D8+4 X1-8
Crooked&Tight SH7+4 L9-6 D8+6
Crooked&Travels W11-3
Crooked&Up B2+9 K3+4 W1-5 W5-5 W8-5 W11-7 L8+5 L9-4 X1-7
Crooked&Waist W4-4 W5+7
Dart B4+11 B5+15 B6+15 B7+11 B13-3 W2-3 W12+9
Dart&Down SH3-4 B4+13 B5+6 B6-11 B7-5 B9-3 B14-5 A2-4 K5-5 W2-13 W12+5
Dart&Folds N4-4 SH8-5 B4-9 B5-11 B6-8 B7+11 A5-9 K2-4 W12-3 D4-3
Dart&Hip B7-4 W9-6 W12+6
Dart&Loose N3-3 N5-4 SH1-5 B3+5 B4-9 B5-10 B6+8 B7-6 B10-6 B13-4 A2-3 A4-5 K6-3 W3-3 W4-6 W12-7 L2-4 D1-3 D4-3 D6-4 X3-9
Dart&LowBack B6-3 K2-3 K6+4 W3-4
Dart&Lumps B7+9 W12+9
Dart&Tight B1-6 B4+3 B6+5 B7+3 B11-3 K1-3 W3+5 W12-6 L3-3 X2-6
Dart&Travels N8-3 B4+8 B5-7 B6+6
Dart&Up B2-4 B4-6 B5+13 B6-9 B7-5 A1-5 A2-3 K3-4 W1-5 W12-3 L9-4
Dart&Waist B4-4 K6+4 W2-12 W3-4 W4-3 W12+11
Down N1-4 SH3+6 SH8+3 B2-3 B3-3 B8-3 B14+6 A2+4 K3-4 K5+6 W1-3 W2+10 W4-3 W5+7 L6-4 L7-4 D1-3 X1-4
Down&Folds SH3-3 SH8-6 B2-4 B3-5 B13+5 B14-3 A2-4 A5-5 W2-5 W5+5 L2+5 L6-4
Down&Hem N7+4 K3-7 K5-3 W6-5 W7-4 W9-3 W11+14 D8+4
Down&Hip W6-3 W7-3 W9+5 W11+7
Down&Loose N1-7 N8+4 SH1+4 SH2+4 SH8+4 B13+6 B14+3 A4-5
Down&LowBack B14-4 K2+5 K3-5 K6-7 W1-3 W2-7 W11-4
Down&Lumps B7-3 K2+3
Down&Neck N2-7 N3-5 N6-3 N7+3 N8+9 B14-5 K7-3 W5-5
Down&Shoulder N5-4 N6-3 SH1-3 SH2+4 SH3+10 SH4-4 SH5-4 SH6-6 SH7+4 W5-6 D2-4
Down&Sleeve SH3+12 SH8-5 B14-4 A2-7 K5-7 W2-6 W5-5 W11-6 L1+8 L3-7 L4-9 L9+5 D2-4 D5-4 D6-5 D7-3 D8+8
Down&Tight N2-3 N8+5 SH3-5 B1-3 B2+4 B3-3 B14-6 K1-7 K3+5 K5-6 W1+8 W2-8 D2-3 X2-3
Down&Travels N7+5 SH5-3 K1-7 K5-4 W7-3
Down&Up N7+6 K3-4 W11-6
Down&Waist N3-3 SH3-5 B2-4 K2-3 W1-5 W2+8 W3-4 W4-5 W5+13
Folds N3-3 SH8+7 A5+11 K2+3
Folds&Hip A5-4 W2-7 W4-3 W9+8
Folds&Loose SH5+4 K2+5 K5+6 K6-4 X3-3
Folds&LowBack K2+16 K5-6 K6+5
Folds&Lumps B4-5 L6-6 D5+5
Folds&Neck N3-4 N4+15 N5-3 SH1+7 A5-4
Folds&Shoulder N2-5 SH1-4 SH2+7 SH3-5 SH4-5 SH5-4 SH6+3 B9-5 A5-4 L2+5 L3-3 L4-3 D2+4
Folds&Sleeve SH3-4 SH8-6 K5-3 L2+9 L4+10 L6+6 D1-3 D5+10 D6-3
Folds&Tight B1-4 B9-4 K5-4 D4-3 X2+5
Folds&Travels SH1+5 SH8-4 A5-4
Folds&Up N4+5 N8-4 SH8-5 B5+5 A5-4 K2-4 W1-7 W4-5
Folds&Waist B10-3 K2+11 K5-8 K6-3 W1-9 W2+10 W4+6 W5-4
Hem K2-4 K3+7 W9+5 W10+5 W11+17 L9-4
Hem&Hip A2+3 W6+4
Hem&Loose W6+4 W10-3 X1-4
Hem&Neck N2-4 N7+5
Hem&Sleeve W11-11 D2-3 D5-4 D8+11
Hem&Tight N2-4 N7+4 W9+4 W11-4 D3+4
Hem&Travels K3-3 W7+5
Hem&Up N2-4 N7+4 SH4-3 B2+5 B5-5 A1-3 K3+4 W1-7 W6-3 W9+7 W10+4 L9-5 D8-4
Hip W4-3 W7+3 W9+23 W10-4
Hip&Loose W6+3
Hip&Lumps B7-4 W9-5 W12+4
Hip&Tight W9+22 X2-5
Hip&Travels W6-5 W7+7
Hip&Up B2-5 W7-4 W9+3
Hip&Waist W1-6 W2+7 W3-6 W4-5 W5-4 W12-4
Loose B3+6 B8+4 B11-4 B13+6 A4+6 W4+6 L6-3 L7-4 X3+19
Loose&LowBack K2+5 K3-5 K6+11 W4-8 X3-5
Loose&Lumps L2+4
Loose&Neck N1+13 N2-6 N3+6 N5+13 N8+4 A4-3 X3-7
Loose&Shoulder N5-8 SH1+15 SH2-4 SH3+7 SH5-7 SH7-5 SH8-3 B3-4 B10-3 B13-4 A4-7 W4-3 W5-4 D1-3 D2-4 X3-8
Loose&Sleeve SH1-3 B8-3 A2-7 A4-4 L1-7 L2+15 L9-5 D6+10 D7-4 X3-8
Loose&Tight SH1-4 B1-3 B6-4 B10-5 W3+3 W4-6 X2+5 X3-8
Loose&Travels SH5-3 B10-3 W6-4 L4-3 D5+6 X3-5
Loose&Up N1-4 N3-3 N7+6 N8+3 B3-3 B10-4 X3-4
Loose&Waist A4-6 K5-5 K6+12 W1-4 W2-5 W3-4 W4+16 W5+5 X3-6
LowBack A4-3 K2+20 K3+4 K5-5 K6+13 W1-4 W2-4 W3-4 W4-6 D8-4 X3-3
LowBack&Lumps K2+7 K6-4 L6-3
LowBack&Tight K6+3
LowBack&Up B2-14 K2-8 K3+16 K6-11 W1-10
LowBack&Waist K2+4 K3+6 K6+12 W4-5
Lumps SH1-4 SH2-3 B4+10 B5-4 B6-3 B7+8 W6-5 W12+9 L1-3 L2+4 L6+5 L7+4
Lumps&Neck B15+4
Lumps&Shoulder SH1-7 SH2-6 SH3-6 SH4-6 SH5-4 SH7+11 B4-5 B7-4
Lumps&Sleeve B7-5 W12-3 L1-7 L2+9 L4-4 L6+10 L9-5 D6-4 D7-4 D8+4 X2-4
Lumps&Tight B3+3 B4-5 B6-4 L6+5 L7-3 X2-5
Lumps&Travels N5-3 N8-6 SH5-3 B1-4 B3+4 B5-5 B7+6 W12-6 L2-4
Lumps&Waist W2-9 W3-3 W4-4 W12+9
Neck N1+13 N2+15 N3+8 N4+5 N5+10 N6+7 N8+4
Neck&Shoulder N1-3 N2-5 N6+16 SH3-5 SH4-3
Neck&Tight N1-5 N2+23 N4-4 N5-4 N7+5 B1-5 B15+5 X2-4
Neck&Travels N5+4 N7+3 SH1+4
Neck&Up N1-5 N3-9 N6+3 N8+13 B2-5 K3-5
Shoulder N2-3 N5+4 N8-3 SH1+8 SH2+9 SH3+14 SH4+10 SH5+6 SH6+10 SH7+9 W1-3
Shoulder&Sleeve SH1-4 SH2-12 SH4+4 L1+6 L3-4 L4-4 D2+12
Shoulder&Tight N2-5 SH1-5 SH2+18 SH3-8 SH4+14 SH7-4 B15+4 D2+7 X2-3
Shoulder&Travels N5+10 N7+4 SH3+5 SH4-6 SH7-3
Shoulder&Up N6+3 N7-4 N8-4 SH1-6 SH2+4 SH3-13 SH4+8 SH5-6 SH6-6 SH7-6 SH8-4 B2-7 K3-7 W10-3 L1+4 D3-4 L8-4 L9-4 D1-5 D2-7
Shoulder&Waist SH3-7 SH4-5 B14+5 W5-3
Sleeve A1-3 L1+10 L2+10 L3+8 L4+9 L6+9 L7+4 L9+8 D1+6 D2+6 D5+6 D6+8 D7+7 D8+7 X2-3
Sleeve&Tight SH2-4 SH5+4 A1-4 L1+5 L2-4 L3+15 L4-4 L6-6 L7+6 L9-5 D1-3 D2+13 D6-3 D7+17 X2-4
Sleeve&Travels N8-11 SH5-5 W6-4 W7-7 L1-4 L2-4 L4+5 L6-3 D1-4 D2-3 D5+9 D6-3
Sleeve&Up SH3-3 SH4+5 B2-8 K3-5 W1-7 L1+8 L4-5 L5-3 L6-5 L8+4 L9+11 D1-4 D7-4 D8-3
Tight N2+5 B1+5 B3-4 B11+4 A1+5 K1+6 W3+7 L3+7 L6-3 L8+4 D7+5 X2+13
Tight&Travels N2-3 B1-4 K1-5
Tight&Up D3+7 D2-5
Tight&Waist B1-4 W2-6 W3+23 W4-3 X2-4
Travels N2-4 N5+7 N7+8 N8+12 SH4-3 SH6-6 B1-3 K3-3 W5-3 D5+3
Travels&Up N6+3 K3-4 W9+6
Travels&Waist B2-3 W1-3
Up N3-3 SH4+4 B2+13 B5+4 K3+10 K7-3 W1+12 W2-4 W5-3 W9+3 W11-3 L3-3 D3+6
Up&Waist SH4-4 B2+7 B5-3 K2-6 K3+10 K6-7 W1+12 W3-7 W4-9 W5-7
Waist A4-3 K5-4 K6+8 W1+8 W2+11 W3+12 W4+15 W5+7 W9-5
above N3-4 N5+3 SH2-4 SH3-8 SH4+4 SH5-6 SH7+6 B1-6 B3-3 B4-7 B5+4 B6-9 B7-3 B8-7 B11-3 B12-6 B14-4 B15-5 A2-4 A3-4 A4-4 A5-4 K1-4 K3-5 K5-6 K6-7 W1+6 W2-4 W3-4 W4-8 W5-5 W6-5 W7-3 W12-3 L1-4 L2+4 L3-10 L4-5 L5-3 L6-4 L7-5 L8-3 D1-6 D2+7 D4-5 D5-5 D7-6 X2-4 X3-4
above>apex B4-4 B5+4
above>arm N7-3 A1-3 L1-5 L2-3 L3-6 L4-5 L5-4 D3-5 L8-4 D1-6 D2+8 D6-3 D7-5
above>back N2-4 N4+4 N5-3 N7+4 SH4-3 SH5-3 SH7-3 A4-7 K1-5 K2-3 K3-7 K5-5
above>backWaist N2-3 SH6-3 B2+6 B14-3 A5-3 K3-6 K6-11 W1-4 W2-3 W5-4
above>bust B1-6 B3-5 B5+6 B6-3 B9+4 B11-5 B15-4
above>dart B4-5 B5+6 B6-5
above>front N7-3 SH7+4 A4-3
above>frontWaist B2-4 B14+4 W2-4 W5-3
above>hip SH8-4 A5-4 K2-3 W2-4 W9+10
above>neck N1+6 N2-4 N6-4
above>placket N2+8 N4-3 N5-4 N7-4 N8-4 SH1-3 SH2-3 SH4-6 SH6-3 SH7-6 B1-4 B2-5 B5-4 B11-4 B12-8 B13-3 A1-6 K1-4 K2-3 K7-4 W1-5 W3-5 W9-4 L1-4 L2-4 D3-4 L7-4 D2-5 D7-4 X2-7 X4-4
above>shoulder SH4+6 SH7-5 A1-6
above>shoulderTip N5-5 N7-3 SH1+6 SH3-7 SH5-7 SH6-5 SH7-8 B5-3 A1-4 W9-3 L2-3 D2-5
above>sleeve SH4-5 L2+5 L3-7 L4-6 L7+6 L8-3 D1-3 D2-5 D5-3
above>underBust B2+5 B5-4 B13-4 B14-6 W1-4
above>underarm A2+4 L1+3 L2-4
above>waist N2-4 N5-4 N7-3 SH4-4 SH6-3 SH7-5 B2-4 K3-4 K6-6 K7-3 W1+12 W4-12 W5-5 W12-3 L2-4 D2-5
across B3-3 B9+3 B11+4 B13-8 B14+6 B15-3 K1+4 K2+4 K5+5 K6-3 L2+6 L3+5
across&allRound B14-7 K2-3 K5-4 W1-10 W2+12 W3-4 W4-8 D5-3 X3-3
across&apex B1+4 B4-7 B5-10 B6+7 W8-3
across&arm B1-6 B11-6 A1-5 A5-5 K1-6 W3-4 W9-3 L3+11 L8-4 D2-3 D7-3 X2-6
across&armsDown D2+4
across&back A4+3 K1-5
across&backWaist K2+10 K3-5 K6-9 W2-3
across&blade K1+7 K5+12
across&bunch B9+5 B11-3 B14+6 A5-3 K1-4 K5+6 W2+5 L2+6 L4-3
across&burst B1-3 B12+3 K1+3
across&bust B1+9 B3-11 B6-3 B9+4 B11-3 B13-4 B15-5 L3-3
across&bustDart B4-3 B5-7 B6+4
across&centre W2+5 X1-3
across&cutInSleeve L3-7 D2+9
across&dart B4-5 B5-7 B6+6
across&extra B9+3 B10-3 B13-5 B14+5 K5+5
across&fold B1+4 B3-4 B9+4 B13-8 B14+6 A4-8 K2+3 K5+8 W2+3 L2+5
across&front A5-4 K5-4 W5+5
across&fullBust B1+4 B3-9 B6-4 B15-3
across&hip W9+7
across&loose B9+3 B13-7 B14+6 A4-5 K5+7 W4-3 L2+4
across&lowerBack K2+7 K6-5
across&misses B4-7 B5-10 B6+7
across&nape N3-6 N4+11 K7-5
across&narrow B11+5 K1+4
across&neck N1-4 N2-3 N5+5 K1-5 X3-6
across&pull B9-4 B11+3 B15-4 K1+5 K3-5 W3+6 D2+3
across&reach N1-4 N2-3 N5+5 N8-4 K1-9 X3-6
across&rise B2+3
across&sag SH8-5 B9-4 B14-6 A5-5 W2-3 W5+6 L2-3
across&seat W9+6
across&shoulder N5+4 SH3-4 SH4-3 L2+3 L3-5
across&shoulderTip D2+4
across&sleeve L2+4 L4-5 D1+4
across&sleeveCap L1-8 L2+16 L6-11 L7-5 D5-4
across&sleeveHem N1-4 N3-3 N6-3 B8-8 B9-3 B11-3 B14-4 A3-3 K5-3 W2-3 L1-3 L2-6 L3-3 L4-3 L6-3 L9-8 D1+10 D2-4 D6-9 D7-9 D8-8
across&small K1+3 W10+3
across&strain B1+3 B9-4 B11+9 B15-6 K1+7 K4-8 L3+5 X2+6
across&swing N8-4 K1-6
across&tight B1+4 B3-8 B9-6 B11+8 B15-4 A5-3 K1+3 K5-5 X2-3
across&tummy SH8-3 B11-3 B14-3 A5-3 K2-3 K5-3 W2-4 W10+7 L2-3
across&underBust N4-3 B3-4 B5-4 B9-5 B13-12 B14+15 A5-4 K2-5 K5-5 L2-4 D5-3 X2-3 X3-3
across&upperArm SH3-3 B11-4 B14-3 K2-3 K5-4 W2-3 L3+9 L4-3 L6-4 D2+3 D5-3
across&upperBack B11-3 K1+9 K3-7 K5+4 W2-3
across&upperChest B1-5 B9+9 B11+13 B15-6
across&waist K2+3 K5-6 W1-10 W2+7 W3+10 W4-10
across&wavy N3-4 N4+5 B5-3 B11-5 B13-7 B14+7 K1-5 K2+3 K4-3 K5+4 K7-4 W1-5 W2+3 L2+5 L3-3 L6-7 L7-5 D8-8
across&whole B1-4 B11-5 K1-4 W2+4 W3-3 L3-5 D5-5 X2+9 X3-8
across&wide B9-4 B10+5 B11-6 A4+7 K1-5 K5-6
aheadOf N3-3 N4-3 N5-3 N6-3 SH1-4 SH2-3 SH3-9 SH4-5 SH5-3 SH6+10 SH7-4 SH8-5 B3-5 B8+7 B9-4 B10+6 B13-8 B14+4 A4-6 A5+18 K2-3 K3-5 K5-3 K6-3 W2-4 W4-4 W5+3 W10-7 L4-8 D1-3 D4-6 D5+4 X1-4 X3-8 X4-3
aheadOf>arm N1-4 SH1-5 SH5+7 SH6-6 SH8-5 B2-3 B3-5 B8-5 B14-3 A2-3 A4-6 A5-8 K2-4 K5-4 W5-4 L3-4 D3-3 D1-6 D2-3 D4-5 D5-5 X4-3
aheadOf>back B2+5 A5-5 K3-9 K5-3 W5+4 D5-3
aheadOf>frontArmhole B10+4 A5-3
aheadOf>neck N1+6 N2-6 B14-5
aheadOf>shoulderTip SH4-3 SH5-4 SH6+4
aheadOf>underarm A1-3 A5+4 D4-4
aheadOf>upperChest B9-3 B10+4
allRound N8-4 SH4-3 SH7+4 B2-7 B14-7 A5-3 K1-4 K2-5 K3-5 K5-4 W1+10 W2+12 W3-5 W4-6 W9-4 L1-4 X1-4 X3+3
allRound&armhole SH7+8 A1-7
allRound&back N7+5 N8-5 K1-3 K3-3 K4-3 K5-4 W2+6 W5-5 D5-4
allRound&bodice W2+3
allRound&bunch K2-3 W1-11 W2+10 W3-4 W4-5
allRound&centre B2-4 K5-4 W1+5 W2+5 W4-4
allRound&extra W2+4
allRound&fold B14-6 K2-4 K5-4 W1-9 W2+12 W4-5 W5-3 L1-4
allRound&hang B11-3 D5+6 X1-5
allRound&long W1-9 W2+5
allRound&loose W1-7 W5+4 X3-4
allRound&neck N2+5
allRound&rise N7-6 N8-5 SH2-3 SH4-4 SH7-4 B2-9 B5-4 K3-7 W1+11 W2-6 W3-3 W4-4 W9-7 W10-4 L1-3 L5-3 D3-5 L8-4 L9-4 D5-5 X2-3 X3-4
allRound&sCurve SH7+7 A1-7
allRound&short SH4-4 B2-4 K3-4 W1+7 W2-4
allRound&shoulder SH7+3
allRound&shoulderTip SH2+3 D2+3
allRound&slant L1-8 L4+7 D5-6
allRound&sleeve L1-8 D5+4
allRound&small SH7+7 A1-7
allRound&strain SH2+3 D2+3
allRound&swing SH7+3 W1-3
allRound&tilt W1-3 W2-4 W4-5 W5+5
allRound&uneven B11-3 L4-6 L9-4 D5+8 X1-5
allRound&waist K2-3 W1+4 W2+7 W3-6 W4-4
angleFlat N5-4 B4-5 B6+3 W8-3 W9-5 L1-6 L2-6 L3-5 L4-6 D3-4 L6-5 L7-4 L8-6 L9-4 D1+7 D2-4 D5-6 D6-5 D7-4 D8-3
angleFlat&catches W9-3 L1-5 L2-5 L3-4 L4-5 L6-4 L7-4 L8-5 D1+7 D2-4 D5-5 D6-4 D7-3
apex B1+4 B4+9 B5+6 B6+7 B10-4 B11-4 B15+3 A4-4 K1-4 W3-5 X3-4
apex&bunch N4-4 SH8-4 B1-7 B3+9 B4-7 B5-6 B6-4 B15-3 A5-6 D4-3
apex&bustDart B5+5
apex&dart B4+4
apex&dartTip B6-6 B7+3
apex&dig B1-4 B6-4 W1-3 W3-5 W4+6
apex&fold B1+5 B3+3 B6-3 B10-4 B13-3 A4-4 W8-4
apex&loose B1-5 B4-4 B5-4 B6-4 B10-4 B13+4 B14-3 B15-3 A4-4 X3-6
apex&misses B3-8 B4-10 B5+8 B6+4 B7-4 B15-5 W3-5 W4+5
apex&narrow SH4-6 B1-9 B3-4 B4-5 B5-6 B6+11 B11-7 B15-5 K1-5 L3-4 D7-5 X2-7
apex&neck N2-4 B1-4 B15+7
apex&neckSide B1-3 B15+3
apex&oneShoulderLow B1-6 B15+7
apex&past B4+11 B5-10 B6-11 B7-4
apex&pointy B15+4
apex&pull N2-3 B1+7 B3-5 B4-5 B5-5 B6-5 B11-4 K4-4
apex&reach B4+8 B5-8 B6-4
apex&shoulder B1-4 B15+6
apex&shoulderSeam SH6-3 B1-4 B15+7
apex&sideSeam B1+8 B15-9 W6-4 W7-4 W8-5
apex&slant B1+6 K4-4
apex&strain B1+3 B5-4 B6-4 B15+5
apex&swing B5-4
apex&tight B1+4
apex&tip B4-3 B6-4 B7+5
apex&upright B1-6 B4-7 B5+7 B6-7 B10-5 B13-4 B15-4 A4-6 K6-5 W4-6 X3-4 X4-3
apex&waist B1-4 B6-4 W1-3 W3-5 W4+6
apex&wide N3-3 N5-6 SH3-5 B1-5 B3-9 B4-4 B5-7 B6+11 B10-6 B13-6 B15-4 A4-6 W4-6 D6-5 X3-6
arm N1-4 N2-9 N6-3 N7-8 N8-5 SH1-4 SH2-4 SH3+4 SH4-4 SH7-4 SH8-4 B1-4 B2-3 B3-4 B9-5 B11-5 B12-3 B13-4 B14-5 B15-3 A1+5 A2-5 A3-4 K1-5 K2-3 K3-3 K4-3 K5-4 K6-3 W1-3 W2-3 W3-4 W4-7 W6-4 W9-4 W11-3 L1-4 L2-7 L3+12 L6-3 L7-3 L8-4 L9-3 D1+4 D5-5 D6-4 D7+4 D8-4 X1-10 X2-4 X3-8
arm&armhole SH3+5 A2-6 A5-3
arm&armsUp A1-3 L3-6 L5+5 D3+10
arm&back B10-5 A4+6 K5-4
arm&bendElbow SH3-3 B11-3 A1-6 A4-4 A5-3 K1-4 L3+6 L5-5 D3-6 L8+3 D4-4 D7-4
arm&blade B10-5 A4+8 K5-6
arm&bunch B3-3 B9-6 A4+5 A5+5 L3-3 D4-4
arm&cannot N1-6 N3-4 N4-3 N6-5 SH1-4 SH3-4 SH5-4 B5-3 B7-4 B8-7 B10-4 B11-5 B12-5 B13-5 B14-3 A1+6 A2-4 A3-5 A4-5 A5-4 K1-9 K6-3 W1-3 W4-3 W7-3 W8-3 W9-4 W12-3 L3+7 L4-4 L6-4 L8-10 L9-3 D1-8 D2-3 D4-7 D6-3 D7-5 X2-3 X4-3
arm&chest B1-5 B3-4 B9-6 B11-4 A4-4 A5+7 L3-3 D4-4
arm&choke N1-3 N2-11 N4-4 N5-5 N7-6 SH2-3 SH3-6 SH4-4 SH6-4 SH7-5 SH8-4 B5-4 B8-3 B10-7 B13-4 B15-4 A1+7 A2-3 A5-4 K2-3 K4-3 K6-4 K7-4 W1-4 L2-4 L3-5 L4-6 L5-4 D3-6 L9-6 D1-6 D2-6 D4-6 D5-3 D6-4 D7+4 D8-4 X3-3 X4-3
arm&cutInSleeve D3+3 D2+3
arm&dig A5+4 L3-7 D7+3
arm&down SH3+7 A2-6
arm&empty N1-3 SH1-5 SH5+7 SH6-5 SH8-4 B3-6 B8-5 B10-5 B11-4 B14-4 A4-6 A5-6 K2-4 K5-3 W5-3 L1-4 L2-6 L3-6 L4-5 L5-3 D3-4 L6-4 D1+7 D2-4 D4-5 D5-5 D6-4
arm&extra A4+3
arm&fold SH5+6 SH8-3 B11-4 B14-4 K5-4 W2-3 W4-5 L3+3 D1-4 D4+7
arm&forward N8-6 SH3-6 SH5-5 SH6+5 W6-4 L3-3 L4+4 D2-4
arm&front SH3-3 SH4-4 SH6-3 B2-5 B6-4 B11+4 B14-4 A1-5 A4-5 A5+5 K1-3 W5-3 W10-3 L3+4 L4-6 L5-3 D3-3 L8-3 D1-6 D5-3 D7-5 X2-3
arm&gape N1-6 N3-4 N6-5 SH1-4 SH3-4 B8-9 B11-3 B12-5 B13-5 A1+8 A2-3 A3-5 A4-4 K1-5 W4-3 L2-3 L3-11 L4-6 L5-7 D3-7 L6-4 L8-3 D1+6 D4-6 D6-4 D7-3
arm&grip A1-6 L3+5
arm&hang B10-5 B15-3 K6-4 W1-4 W4-4 L4-5 D2-5 D4+4
arm&hem B2-3 K3-3 W9-4 W11-4 D3+8
arm&high L9+6
arm&inward L9+7 D7-3
arm&loose N1-5 N3-4 SH1-4 SH3-4 SH5-4 B3-7 B8+10 B9-4 B11-3 B13-8 A1-5 A2-4 A3-4 A5-3 K1-3 K2-4 K3-3 K5-5 K6-4 W4-6 L3-7 L4-4 L5-4 D3-5 L8-3 D1-5 D2-3 D4-6 D7-4 X3-11 X4-4
arm&narrow B6-4 B11+4 A5-3 L3+3 D1-3 D7-4
arm&pull L1-4 L3-6 L4-4 D1-4 D2+7 D7-4
arm&rise K3-3 W9-4 W11-4 D3+9 L9+3
arm&sag SH3+3 SH6-3
arm&shoulderSeam N7-6 N8-7 SH6+4 W6-3 W7-3
arm&side B2-3 W9-4 W11-4 D3+7
arm&sleeve SH3+4 B8-4 K1-4 L1-7 L2-4 L3+3 L4-6 L5-3 D3-5 L6-4 L8-6 D1+7 D2+4 D6-6 D7-5
arm&sleeveCap L1-3 L2-6 L6-3 D1+5
arm&sleeveHem A1-3 L3-9 D7+11 D8-5
arm&sleeveSeam L3-4 L4+9
arm&strain SH2-3 B1-7 B11-7 B15-3 A1-8 A4-3 A5-3 K1-7 K4-4 W3-7 W9-4 L3+12 D3-4 D4-4 D7-3 D8-3 X2-7
arm&swing N8-6 SH3-5 SH5-5 SH6+5 W6-4 L4-3 D2-4 D7+3
arm&tight SH3-5 B1-5 B11-5 A1-5 A5+3 L3+6 D2-4 D7+6 X2-5
arm&twist SH3-3 L3-5 L4+11 X1-8
arm&up K1-5 L3+4
arm&upperBack A4+4 K5-3
arm&upperChest B9-4 B10+6 A4-7
arm&upright B10+4 A4+5 K5-4 W4-5 D4+7
arm&waist B10-5 A4-5 K6-5 W1-4 W2-6 W3-4 W4-8 D4+11
armhole SH4+5 SH7+11 B8+8 A1+9 A2+10 A5-4 L1-3 L7+11 D1-3 D4-4
armhole&armsDown A5+3
armhole&armsUp A2-3 L5+5 D3-4
armhole&back B8-9 A2-5 A3+10
armhole&backArmhole A3+3
armhole&big SH3-3 SH7-6 B3-4 B8-10 B10-4 A1-6 A2+13 A3-5 K1-4 W4-5 L1-4 L2-8 L6+5 D4-4 D6-6 X3-14
armhole&blade SH7-4 B8-6 A3+8 K1-3 K4+4 K5-4
armhole&bodice A2-4 A3-3 L7+4
armhole&bra B8+6 D6-7
armhole&bunch A2+6
armhole&bust B1-6 B3-6 B8+9 B15-4 A1-4 L7-4
armhole&cannot A2-3 L5+4 D3-4 L6+4 L7-6
armhole&dig SH3-3 SH4+6 SH7-8 B8-5 A1+11 A2-5 L7-5
armhole&down SH3+6 SH7-5 B8-4 A1-6 A2+6 A3-3 W5-3 L3-4 L7-3 D4-3
armhole&ease L5-4 L7+4
armhole&edge B8+3
armhole&extra A2+5
armhole&fold A1-4 A5-4 L6-4 L7+8 D4-4
armhole&front L6+6
armhole&frontArmhole L6+6
armhole&fullBust B1-6 B3-6 B8+9 B15-4 A1-4 L7-4
armhole&gape N1-4 SH7-6 B8+13 B12-6 A1-8 L7-4
armhole&grip SH7-4 B8-4 A1+9 A2-5 L7-4 L8-4
armhole&hang A2+5 A3-4 A4+3 D1-6 D4-4
armhole&hem A2+5 W9-5 W11-4
armhole&high SH7-5 B2-5 B5-6 B8-5 A1+7 A2-5 A3-3 K3-5 W1-5 L7-6 L9-5
armhole&long SH3-9 SH7-4 B4-4 B8-3 B14-5 A2-7 W2-5 L1-8 L2-7 L6+4 L9-5 D8-3
armhole&loose SH1+4 A2-4 A3+6 A5-4 K5-3
armhole&low SH3-4 SH7-5 B8-6 A1-4 A2+12 W2-5 L5+3 L7-4
armhole&misses SH5-5 SH7+3 B8-4 A1-5 A2-4 A3+5 L7-3
armhole&narrow B11+4
armhole&neck SH1+4
armhole&neckSide N1-4 N2-7 N3-5 N4-4 N5-5 N6-9 SH1-5 SH4+15 SH7-9 B8-6 B15-4 A1-8 A2-8 A3-4 A5-4 L6-4 L7-9
armhole&oneSide SH8+4 A2-4 A5-4
armhole&past SH1-5 SH2-4 SH3+6 SH5-3 SH7-8 B4-4 B8-3 A1-4 A2+7 L7-4
armhole&peak SH3-5 SH4-5 SH7+11 A1-4 L7-6
armhole&pinch SH4-3 A1+4
armhole&pointy SH7+4
armhole&pucker SH7-6 B7-5 B8-5 A1-5 A2-6 L6-9 L7+13 D4-3
armhole&pull A1+4 A2-4
armhole&reach B8-4 A2+8 K1-5 L7-3 X3-6
armhole&sCurve SH7+7 A1-6
armhole&sag SH1+5 SH3-12 SH4-5 SH7+7 SH8-6 B8-6 B14-3 A1-5 A2+3 A3-4 W5-6 W11-5 L7-5
armhole&seam N6-4 SH3-4 SH4+8 SH7+4 A1-4 A2-3 L6-4
armhole&seat A2+5 W9-5 W11-4
armhole&short SH7-3 L1-9 L6-7 L7+9 L9-4
armhole&shoulder SH7+8 A1-8 A2-4
armhole&shoulderSeam N6-4 SH3-10 SH4-7 SH5-4 SH6-7 SH7+13 B8-3 A2-4 L7-3
armhole&shoulderTip SH1-11 SH2-10 SH3+4 SH4+4 SH5-5 SH7+4 B8-4 A1-5 A2-8 L7-5
armhole&show SH7-4 B8+6 A1-3 L7-3 D6-9
armhole&side SH3-4 SH7-4 A1-3 L7-3 D6-4
armhole&skin B8+6
armhole&slant SH7-3 SH8+3 B8-3 A2+8 A5-5 L7-5
armhole&sleeve A1-7 A2-5 L3-4 L7+6
armhole&sleeveCap SH3-4 B8-4 A1-7 A2-8 L1-10 L2-7 L7+10
armhole&sleeveSeam L4-4 L6-9 L7+9
armhole&sleeveless B8+3
armhole&small SH4-4 SH7+4 B8-4 B11-4 A1+7 A2-6 A5-4 L1-6 L3-4 L6-5 L7+6 D7-3 X2-10
armhole&stickOut SH1-4 SH3-5 SH4-5 SH7+12 A1-7 A2-11 K4-3 W10-4 W12-4 L7-6 D1-8
armhole&stickUp B8-4 A2+5
armhole&strain SH7-4 B8-4 B11-3 A1+10 A2-5 A3-3 K1-4 K4+5
armhole&swing N5-4 SH1+5 SH4-4 B8-3 A1-3 A2-4 K4+5 L7-4
armhole&tight SH7-4 B1-5 B3-4 B8+6 B15-3 A1+10 A2-6 A5-3 L3-3 X2-3
armhole&tip SH4-7 SH7+10 A1-5 A2-4
armhole&underBust B13-3 A2+6 W9-5 W11-3
armhole&underarm B8-9 A1+4 A2+7 A3-5 D4-6
armhole&upperArm SH3+5 A2-5 L3-4
armhole&upperBack B8-4 A2-3 A3-4 A4+6 K5-3
armhole&upright A3-3 A4+4
armhole&wavy N4-3 SH1-3 SH3-4 SH4-4 SH7-7 B1-4 B7-3 B9-4 B14-3 A1-10 A2-4 A3-4 A5-4 W2-4 W8-3 L6-8 L7+11 D4-3 D8-9
armhole&wing N2-4 N5-3 N7-4 N8-3 SH1+7 SH4-5 SH7-8 SH8-3 B2-3 B8-6 B10-3 A1-9 A3-5 A5-4 K7-4 W1-3 D3-3 L7-8 D1-11 D2-4 D4-7 X4-4
armsDown SH2-4 SH3+6 SH4-6 SH5-6 SH6-8 SH7-4 A1-4 A2-3 K1-4 L1-5 L3-8 L4+6 L5-5 D3-6 L6-3 L8-3 D1-4 D2+9 D4+11 D5-4 D6-4 X1-3 X2-7 X3-5
armsDown&cutInSleeve SH4-3 L3-6 D2+9
armsDown&extra A2-3 D4+5
armsDown&fold D4+5
armsDown&front A5+3
armsDown&frontArmhole A5+3
armsDown&misses N5-3 N6+6 SH3-8 L1-3 L3-3 L4+7 D1-3 D2-5 D6-5
armsDown&neckSide N6+4
armsDown&shoulder SH3-6 SH4-4 D2+9
armsDown&shoulderSeam N5-4 N6+4 SH2-4 SH3+9 SH4-4 SH5-7 SH6-9 SH7-5 L4-4 D2-5 D4-4
armsDown&shoulderTip D2+4
armsDown&sleeve SH3-7 L1-4 L3-8 L4+7 D1-4 D2+6 D6-6
armsDown&sleeveCap D2+3
armsDown&strain SH3-5 L1-3 L3-4 D2+9
armsDown&tight L3-5 D2+6
armsDown&underarm A2-4 A5-4 D4+8
armsDown&upperArm L3-4 D2+5
armsUp B8-3 A2-5 W10-4 L1-4 L5+19 D3+29 L6-3 D6+9
armsUp&bodice W1-4 D3+10
armsUp&bra B8-12 A2-10 L5-4 D3-6 D6+15
armsUp&cannot K1-5 W10-3 L3-4 L5+18 D3+18 L6-3 D6-4
armsUp&cutInSleeve L5-7 D3+14 D1-3 D5-3 D6-4
armsUp&ease L3-4 L4-4 L5+11 D3-9 L6-10 L7-4 D6-5
armsUp&fold W8+6 D8+4
armsUp&front B2-4 K1-4 L5+5 D3+5 D6+4
armsUp&grip L3-4 L5+3
armsUp&hem K3-4 W9-4 D3+5
armsUp&loose B2-3 D3+7 D6-3 X3-4
armsUp&low A2-3 L5+5 D3-4
armsUp&pull W3-4 L1-5 L5+4 D3+6
armsUp&reach B2-4 K1-4 L5+5 D3+5 D6+4
armsUp&rise B2-6 K3-3 W1-3 L5+3 D3+20
armsUp&show B8-12 A2-10 L5-4 D3-6 D6+15
armsUp&sideSeam W8+10 L5-4 D3-5 D8-4
armsUp&sleeve W3-3 L1-5 L3-4 L4-4 L5+16 L6-7 D1-4
armsUp&sleeveCap W3-4 L1-4 L5+4
armsUp&sleeveHem D6-3 D8+5
armsUp&stickOut D3+4
armsUp&tummy D3+4
armsUp&uneven D8-3
armsUp&up D3+6
armsUp&wavy W8+6 D8+4
armsUp&whole D3+6
back N7+7 SH5+7 K1+4 K3+8 K5+5 W7+4
back&backArmhole A3+3
back&backHem W7+4 W11+3
back&backWaist K2+4 W4-3
back&big K1+4
back&blade A4+6 K1-5
back&bunch N3-3 N4+6 N7-4 A4+4 K5-5 L4+4
back&burst N7-4 SH5-3 B12-3 K1+7 K3-5 K4-3
back&centre N3-4 N7-4 SH5-4 B2-4 A4-4 K1-4 K4-4 W2-4 W7-5 X1+8
back&choke N2-9 N7+11 N8-3 K1-4 K3-5 K5-6 W4-4 W5-4
back&collar N7-3 N8-8 K3-5 K5-3 K7+5
back&dig N2-4 N7+6
back&down N8+5 SH5-4 K4-4 K5-4 W7-3
back&erect A4-3 K3-3 K5+4
back&extra A4+5
back&fold D5+6
back&forward N7-5 N8+5
back&forwardShoulders SH5+6 K3-6
back&front N2-5 N3-3 N7+4 SH6-4 B2+4 A5-3 K3-9 K5-5 L4-8 D5+5 X1-3
back&frontWaist N4-3 N7-4 SH5-4 B2-5 A4-4 K1-4 K2-4 K3-6 K5-6 K6-5 W2+5 W5+7 W12-3 D5-4
back&gape B8-6 A3+6 K6+4 W11-3
back&grip K1+3
back&hang N7-4 A3-5 K5-8 W4-5 D5+9 X3-7
back&hem W7+4 W11+3
back&high B2-4 B5-4 K3+9 W1-3
back&hump K7+5
back&inward SH2+4
back&long N7-7 SH3-5 SH5-4 B4-6 B9-4 B14-6 A3-3 A4-4 K1-8 K4-4 K5+7 K6-4 W1-4 W2-8 W7-3 L1-3 L4-4 L9+5 D5-3 X1-3
back&loose N3+4 N7+3 A3+4 A4+3 K3-4 K5+3 W4-3
back&low W5+5
back&lowerBack K2+4
back&misses N7-4 SH5+5 SH7-3 A4-4 K1-4 K2-4 K3-6 K5-4 K6+4 W4-5
back&nape N3+6 K3-4
back&narrow N7-4 B6-4 B11-5 A4-4 K1+9 K3-7 K4-4 D7-3 X2-3
back&neck N3+5 N8+3 K7-8
back&past SH3-7 SH5+10 SH6-6
back&pucker K2+3
back&pull N2-4 N5+4 N7+4 N8+7 SH4-5 SH5-6 B11-4 B15-3 A3-4 A4-4 K3-9 K5-4 W7+5 L8-3 D2-3 X1-3 X2-6
back&reach N7-3 K1+9 K3-5 K4-5 L4-4
back&rise N3-8 N4-4 SH5-3 B2-11 A4-5 K1-5 K3+12 K5-3 K7+5 W1-4 W7-3 W9-5 D3-5
back&roundBack K3+5
back&sCurve N7-3 SH7+3 K1-4 K2-4 K5-4 K6+4 W8-4
back&sag N2-6 N3-4 N7+5 N8-4 K3-6 K5+4 W5-6 W11+5
back&seam SH2-4 SH4-4 SH5+9 K3-5
back&seat W7+5 W9-5
back&short N7-4 SH4-4 SH5-3 B2+4 A4-5 K1-5 K3+10 K5-5 W1-8 L8-3 L9-4
back&shoulder N5+5 N7-4 N8-3 SH2-3 SH4-5 K3-3
back&shoulderSeam N6-3 SH3-8 SH5+12 SH6-7 K3-3 K5-4
back&shoulderTip SH3-4 SH4-5 SH5+9
back&show N7-3 SH6-3 K1-5 K4+4 D6-4
back&sideSeam N7-7 SH5-5 K1-5 K3-6 W6-9 W7+15 W8-4 W11-4
back&skin K3+3
back&slant N7-4 B15-4 A4-3 K1-8 K3-7 K4+11 K5-4 W7-4 L1-4
back&sleeve N4-3 N7-4 SH3-4 SH5-4 A4-7 A5-3 K3-6 K4-3 K5-10 L1-4 L2-6 L3-5 L4+5 L6-5 L9+5 D1-5 D5+4 D6-4
back&slide N5-5 N7+10 A4-4 K1-4 K3-3 K5-4 W6-4 W7+4
back&small N2-5 N3+3 N4-3 N7-6 SH4-4 SH5-3 SH7-3 B11-3 A1-3 A3-3 A4-4 K1+6 K3+6 K5-7 W1-5 W3-3 W7-3 W8-3 L1-3 X1-3 X2-7
back&strain B15-3 K3-5 K4+7
back&swing N3-3 N7-4 K1+3 K3-4 K4-4 W6-4 W7+3 L4-5 D5-3 X1+4
back&throat N2-5 N7+4 K5-3
back&tight K1+5
back&tilt K3-4 K4+4 W6-4 W7+4
back&tip N7-4 SH5+5 K3-3 W6-3 W7+4
back&uneven X1+3
back&up N5+5 N7-4 SH2-4 SH4-5 SH5-3 K3-3 W6-3 W7+4
back&upperBack N7+4 N8-3 K1-5 K3-8 K6-4
back&upright N7-3 SH5-3 B10-7 A3-4 A4+8 K1-4 K3-5 K5+4 K6-4
back&waist N3-4 K5+3 W2-3 W4-5
back&whole N7+7 SH5-3 A4-6 K1-7 K3-5 K4-4 K5-4 L4-7 D5+10 X1-3 X2-8 X3-8
back&wide N5-5 N7-4 SH5-3 B6-4 B10-6 A3-5 A4+14 K1-7 K3-6 K5-7 K6-3 D6-4 X3-5
back&wornOn N5+3 N8+8 SH4-4 SH5-10 K1-5 K3-4 K4-4
backArmhole B8-7 B10-3 A2-4 A3+17 A4+4 K5-3 D6-3
backArmhole&edge A3+4 A4-7
backArmhole&fold B10-7 A3-6 A4+9 K5-3 D4-3
backArmhole&gape B8-4 A3+13
backArmhole&loose B8-4 A2-3 A3+10 A4-5
backArmhole&upright B10-7 A3-8 A4+11 K5-3 K6-3 D4-3
backHem B2-12 A3-3 K3+13 K5-4 W1-4 W6-6 W7+5 W9-7 W10-7 D3-6
backHem&hem W7+4 W11+3
backHem&high B2-3 B5-3 K3+7 W11-6
backHem&long K3-7 W11+5
backHem&rise N7-5 B2-10 K3+10 W1-3 W9-8 W10-6 W11-6 D3-7
backHem&sag K3-6 W11+8
backHem&seat K3-4 W7+4
backHem&short K3+6
backHem&sideSeam K3-5 W6-5 W7+8 W11-5
backHem&slide N8+3 K3-3
backHem&swing W6-6 W7+6
backHem&up N7+7 N8-4 B2-7 K3+3 W7-3 W10-5 W11-7
backWaist K2+5 K3+7 K6+13 W1-4 W2-3 W3-4 W4-7
backWaist&bunch K6+4
backWaist&choke K2-4 K6+4
backWaist&dart B6-3 K2-3 K6+4 W3-4
backWaist&extra K6+7 W4-4
backWaist&fold K2+13 K5-6 K6-4 W2-3
backWaist&front B2+6 K2-7 K3-5 K6-7
backWaist&gape B8-3 A3-4 K2-7 K3-5 K6+7 W4-5
backWaist&hang K2-4 K6+4
backWaist&high B2-4 K2-4 K3+7 K6-5 W1-5
backWaist&long K3-3 K6-4 W2-3
backWaist&loose K3-6 K6+9 W4-9 X3-4
backWaist&pinch K2-6 K3-3 K6+4
backWaist&rise B2-11 K2-7 K3+13 K6-11 W1-6
backWaist&sCurve K3-3 K6+4
backWaist&small B6-3 K2-3 K6+4 W3-4
backWaist&stickOut K2-5 K3-3 K6+8 D1-3
backWaist&tilt B2-4 K2-3 K3+4
backWaist&up B2-5 K2-3 K3+4
backWaist&upperBack K3-4 K6-4 W2-3
backWaist&upright B10-4 A4-3 K2-13 K3-4 K6+14 W4-4
backWaist&waist K2+4 W4-3
backWaist&wavy K2+5 K3-5 D8-4
backWaist&wide K2-6 K6+7 W4-3
backward N2-8 N5-5 N7+17 N8-7 SH3-5 SH5+8 SH6-7 B2-3 B15-5 A5-5 W6-7 W7+13 W8-5 W9-4 W11-3 L1-3 L2-4 L6-3 D2-7 D5+8 X1-7
backward&choke N2-4 N7+7 D5+3
backward&cutInSleeve N7-12 SH5-3 W7-5 L4-4 D1-4 D5+11 D7-3
backward&dig N1-3 N7+4 SH5-4
backward&forward N8-3
backward&hang N7-6 D5+7
backward&hem W6-4 W7+5 W11-5
backward&loose N7+7 B2-6 W1-3 D3-4 X3-4
backward&neck N1-4 N2-5 N5-4 N6-3 N7+6 SH5-4 B15-3 W7-4
backward&pull N2-6 N7+8 N8-3 SH2-3 SH5-4 B1-4 B11-4 B15-4 K1-3 K4-4 W3-4 W6-3 W7+6 W8-3 W9-5 L8-3 D2-3 X2-4
backward&rise N7+7 N8-3 B2-6 W1-4 D3-4 X3-4
backward&sCurve N7+10 SH5-4 SH7-5 SH8-3 A3-3 A4-4 K1-3 K2-3 K3-4 K5-3 K6-4 K7-3 W5-3 W7-6 W11-4 L4-8 L9-4 D5-6 X1-9 X2-3 X3-3
backward&seam N7-7 N8-4 SH4-3 SH5+4 SH6-4 W6-5 W7+5 L4-3 L6-3 L7-4 L9-3 D5-4 X1-5
backward&shoulderSeam N6-5 N7+4 SH1-5 SH2-4 SH3-12 SH4-5 SH5+12 SH6-12 SH7-4 W7-8 D5-4
backward&shoulderTip N7-3 SH3-4 SH5+5
backward&sideSeam N7-7 W6-9 W7+17
backward&slant W7+5 W11-3 L4+3
backward&sleeve N7-5 SH5-4 W7-6 L1-4 L3-4 L4+7 L6-4 D1-4 D5-4 D6-4
backward&sleeveCap N7+5 SH5-3 W7-3 L1-5 L2-5 L6-4
backward&slide N5-5 N7+12 N8-7 SH3-4 D5+4
backward&swing SH3-3 SH5+7 W6-6 W7+9 W8-5 L4+4
backward&tilt N7-3 SH5-5 W6-7 W7+11 W8-4 W11-5 L9-3 X1-5
backward&tip N7-8 N8-4 SH5+6 SH6-4 W7-5
backward&whole N7+7 N8-5 SH5-3 W7-4 D5-5 X2-3
backward&wornOn N7+6 N8-4
behindOf N1-6 N2-5 N3-7 N4-9 N5-8 N6-8 N8-8 SH1-10 SH2-10 SH3-15 SH4-10 SH5+15 SH6-14 SH7-10 SH8-10 B1-6 B2-5 B3-7 B4-6 B5-6 B6-6 B7-8 B8-10 B9-6 B10-11 B11-6 B12-7 B13-10 B14-6 B15-6 A1-8 A2-7 A3+7 A4+9 A5-11 K1-5 K2-7 K3-5 K4-6 K5-7 K6-9 K7-5 W1-5 W2-6 W3-5 W4-9 W5-5 W6-6 W7-8 W8-6 W9-7 W10-6 W11-6 W12-6 L1-7 L2-7 L3-6 L5-6 D3-7 L6-9 L7-8 L8-6 L9-6 D1-7 D2-6 D4-7 D6-6 D7-6 D8-6 X1-6 X2-6 X3-10 X4-7
behindOf>shoulderTip SH1-3 SH3-4 SH5+5
below N3-5 N4+7 SH3+3 SH4-4 SH7-5 B2-5 B3-5 B4-5 B5+5 B6-5 B8-5 A2+9 A5-3 W2+5 W3-5 W4-5 W12+7
below>apex B4-8 B5+9 B6-9
below>armhole N4-3 SH1-6 SH7-4 SH8-3 B8-10 A1-4 A2+14 A5-8 L7-6 D4-3
below>back N4-3 N7-4 SH5-4 B2-5 B5-4 A2-4 A3-4 A4-4 K1-5 K2-3 K3-6 K4-3 K5-4 K6-4 W2-6 W5+6 W7-3 W10-3 W12-4
below>blade N4-4 K1-4 K5+7
below>bust B1-3 B3-8 B6-4 B13+3 B14+3
below>collar N3-4 N4+6
below>dart B4-8 B5+6 B6-8
below>front B2-3 W5+4 W10-4
below>nape N3-10 N4+11 N8-3
below>neck N3-5 N4+4
below>shoulder SH3+3 SH4-7 SH7-6 A2-5 L2+4 L3-5
below>shoulderSeam N4-3 N5-4 N6+6 SH3-6 SH4-4 SH5-4 SH6-5
below>shoulderTip N4-4 SH1-7 SH2-5 SH3+7 SH4-8 SH5-4 SH7-9 A2-6 L2+4 L4-4 L6-3 L7-4 D1-3 D2-4 D5-4 D6-3
below>tummy W5+4 W10-4
below>underarm SH1-3 B5-6 A2+5 A5-3 W12-3 L1-4 L9-4 D4-6
below>upperBack A4-5 K5+7
below>waist N2-4 N4-5 N6-3 SH3-3 B2-6 B4-4 B5-5 B7-4 B9-3 B13-3 B14-4 A2-8 K6-5 K7-3 W1-15 W2+8 W3-12 W4-12 W5-10 W6-3 W8-3 W10+8 W12+10 L2-4 D4-3
below>waistDart B7-7 W12+11
bendElbow SH4-3 B2-4 A1-4 K1-4 K3-4 W1-4 L1-5 L4-5 L5-6 D3-6 L6-3 L8+23 L9-4 D1-3 D2-4 D6-3 D7-4 X2-3
bendElbow&cannot N1-4 N2-4 N3-3 N4-3 N5-3 N6-3 N8-3 SH1-3 SH2-3 SH3-5 SH5-5 SH6-3 SH7-4 SH8-3 B3-3 B4-3 B5-3 B6-3 B7-4 B8-4 B9-3 B10-4 B11-5 B12-3 B13-3 B14-3 B15-3 A1-6 A2-4 A3-4 A4-4 A5-4 K1-7 K2-3 K4-3 K5-3 K6-3 K7-3 W2-3 W3-3 W4-3 W5-4 W6-3 W7-3 W8-5 W9-4 W11-3 W12-3 L2-4 L3+6 L4-4 L5-8 D3-8 L6-6 L8+7 L9-3 D1-4 D2-3 D4-5 D5-3 D6-3 D7-3 D8-3 X4-3
bendElbow&dig L3-3 L8+6
bendElbow&grip L3-9 L8+9 D7-3
bendElbow&pinch L8+5
bendElbow&pull L3-4 L8+7
bendElbow&rise L1-4 L8+6 L9-3
bendElbow&sCurve B2-4 K3-3 W1-4 W8+5 L8+4
bendElbow&short SH4-3 B2-5 K3-4 W1-5 W8-4 L1-3 L8+8 L9-4
bendElbow&sideSeam W8+10 L8-6
bendElbow&sleeve L1-5 L3-15 L4-4 L5-3 L8+18 D6-3 D7-3
bendElbow&strain L3-6 L8+8
bendElbow&tight L3-10 L8+10
bendElbow&uneven W8+4
bendOver N1+11 N2-5 N3-4 N6-5 SH1-3 SH3-5 SH4-3 SH5-6 SH6+9 B8-5 B12-3 B13-3 W4-3 W6+6 W7-5 W8+4 W11-5 X3-4
bendOver&gape N1+9 N3-4 N6-4 B8-5 B13-3 W4-3 X3-4
bendOver&hem SH6-3 W6+8 W7-5 W8-7 W11-6
bendOver&neck N1+8 N2-5 N6-3
bendOver&sCurve W8+8
bendOver&shoulderSeam N6-3 SH3-7 SH4-4 SH5-7 SH6+10 SH7-4
bendOver&sideSeam W6+7 W7-4 W8+6 W11-5
beside N1+6 N5-4 B4-7 B6+6 B10+9 A1-5 A2+4 A4+5 A5-9 W2-5 W4-4 L6+9 L7-4 D2+7 D4-4 D7-5 X2-4 X3-5
beside>apex B4-8 B5-13 B6+10
beside>arm B9-4 B10+4 A4+4 K5-3
beside>armhole B8-5 A2-5 A3-4 A4+5 K5-4
beside>back A4+3
beside>backArmhole B10-6 A4+7
beside>bust B2+3
beside>frontArmhole N1-3 SH1-4 SH8-5 B6-4 B8+4 B10+11 A2-5 A4-7 A5-9 L6-4 D4-4
beside>frontNeck N1+7 N2-5 N5-5 B10-4
beside>neck N1+6 N2-6 B10-5 A4-3
beside>seat W7+4
beside>sleeveCap L1-5 L2-8 L6+8 L7-6 D8-5
beside>sleeveSeam SH3-4 SH4-3 B7-3 L4-5 L7+4 D2-3 D5-3 D8-4 X2-6
beside>underarm B5+5 B6-5 B7-4 A1-5 A2-4
beside>vNeck N1+7 N2-6 N5-4 B10-3 A4-3
beside>waist N1-3 SH1-4 SH7-5 B6-4 B10-3 A1-7 A2+8 K6-3 W1-7 W2-4 W3-7 W5-4 D2-5 D4-4
between N1-10 N2-4 N3+4 N4-5 N5-7 N6+5 N8-5 SH6-3 B1-3 B2-5 B4-5 B5-4 B6+8 B7-5 B8-6 B11+15 B12+5 B14-4 B15-4 A1-4 A3-3 K1-4 K7-6 W5-4 W10-3 L2-6 L3-6 L4-3 L6-3 D1+5 D6-5 X1-4 X2-4 X3-4
between>apex B4-4 B6+4
between>arm N3-4 N6-4 SH4-3 SH5-5 B1-5 B3-4 B6-6 B8-3 B9-3 B10-4 B12-4 B15-3 A1-4 A5+4 K1-5 K5-4 L1-4 L2-6 L3-9 L4-5 L5-3 D3-4 L6-4 L7-3 D1+7 D4-4 D5-4 D6-4 D7-5 X2-3
between>armhole B11+4
between>chest B1-5 B11-4 A5+4 L3-4
between>collar N3-3 N6+4
between>dart B4-5 B5-4 B6+7 B7-4 B11-5 W12-3 X2-3 X3-4
between>dartTip B4-4 B5-6 B6+9 B7-7 B11-5 X2-4 X3-5
between>frontArmhole B1-3 B8-7 B10-4 B11+11 B12-5 B15-4 A1-8 A5-11 K1-3 K4-3 W3-4 L7-3 X2-3
between>neck N1-9 N2-5 N3-6 N5-5 N6+9 B10+6 B11-4 B12-5 A4-3 K5+4
between>placket B8-4 B12+9 D6-5
between>shoulderSeam N3-3 N6+4
between>upperBack B11-3 K1+3
between>waist N3-4 K5+4 W2-3 W5-3
big N2-5 N3-4 N4-4 N6-4 N7-4 N8-5 SH1-6 SH2-4 SH4-4 SH5-4 SH6-4 SH7-6 SH8-4 B1-5 B2-5 B4-4 B5-4 B7-4 B8-9 B9-4 B11-4 B12-4 B14-5 B15-4 A1-6 A2+5 A3-6 A4-3 A5-4 K2-5 K3-5 K4-4 K5-7 K6-4 K7-5 W1-5 W2-5 W3-5 W4+3 W5-5 W6-4 W7-4 W8-4 W9-5 W10-5 W11-4 W12-4 L1-5 L2-9 L3-4 L4-5 L5-4 D3-4 L6+4 L8-4 L9-8 D1-5 D2-4 D4-8 D5-6 D7-7 X1-5 X2-5 X3+17 X4-5
big&bust B1-6 B3+8 B6-5 B13-4 X3-8
big&cannot A2-4 K1+6 X3-9
big&front N5-4 B2-4 B10+5 A2-4 A4-5 L6+4 L7-4 D6-3 X3-7
big&frontArmhole B8-3 A2-4 L4-4 L6+8 L7-5 D6-5 X3-4
big&frontNeck N1+8 N2-5 N5-3 X3-6
big&neck N2-5 N5+5 K1-5 X3-6
big&reach N1-5 N2-4 N5+4 SH3-3 SH8-3 B3-5 B4-3 B8-5 B10-6 B13-4 A2+5 A4-3 K1+5 K4-3 K7-4 W4-5 W10-3 L6-4 L7-4 D6-3 D8-3 X3+4
big&sleeve B8-3 A2-4 L4-4 L6+8 L7-5 D6-5 X3-4
big&sleeveCap B8-4 A2-13 L1-5 L2-10 D6-5 X3-4
big&sleeveHem N1-3 N5-3 SH3-4 B3-6 B6-3 B10-4 B13-4 A1-3 A2-7 A4-3 W4-7 L1-4 L2-7 L4-4 L6-9 L7-4 L9-9 D1-5 D2-4 D4-5 D5-3 D6+7 D7-10 D8+6 X3-14
big&waist K6-4 W2-4 W3-5 W4+8 X3-9
big&whole B3-3 A2-3 W4-4 X2-5 X3+11
blade A1-3 K1+12 K4+6 K5+10 W3-4
blade&bunch N4-4 K1-6 K4-4 K5+7
blade&extra SH1-4 SH3-3 SH4-5 SH5-4 A3-3 A4-6 K1-4 K4-4 K5+7
blade&fold K4+3 K5+12
blade&gape B8-6 A3+11
blade&loose K5+6
blade&outward K1-5 K4+7 W3-4
blade&peak K1-4 K4+6
blade&pull N7-3 A1-3 K1+5 K4+4 K5-3 W3-4
blade&side K1-4 K4+6
blade&slant K1-11 K4+12
blade&strain K1+6 K4+9 K5-3
blade&swing N8-3 K1-6 K4+3
blade&tight K1+6 K5-7 L3-3 X2-4
blade&tilt K1-4 K4+4
blade&underarm A1-7 K1-6 K4+7
blade&upright B10-5 A4+8 K5-6
blade&waist K1-3 K4+9 W3-6
blade&wide A4+6 K1-5 K5-6
bodice SH2-3 SH3-5 SH4-5 B2-6 B4-5 B5-3 B9-4 B14-6 A1-3 A2-4 K3-6 K5-5 W1+14 W2+15 W11-3 L1-4 L4-5 D3+3 L6-9 L7+6 L8-3 D2-3 D7-3 D8-4 X1+8 X2-3 X3-3
bodice&cutInSleeve D3+5
bodice&front B8+4
bodice&gape SH1+3
bodice&long N2-3 N3-3 N4-3 N7-3 N8-4 SH1-4 SH2-3 SH3-7 SH4-4 SH8-4 B1-3 B2-4 B4-9 B9-7 B11-3 B12-3 B13-4 B14-11 A1-4 A2-4 A3-3 K2-3 K4-3 K5-9 K7-3 W1+4 W2+18 W3-4 W5-4 W9-4 W11-6 W12-5 L1-4 L3-3 L5-3 D3-5 L7-7 L9-5 D4-3 D7-3 D8-3 X1-5 X2-5 X3-4 X4-4
bodice&loose X1+4 X3-3
bodice&pucker L4-4 L6-8 L7+8
bodice&rise D3+7
bodice&seam X1+8
bodice&short N4-3 SH4-7 B2-8 K3-8 W1+16 W2-8 W10-3 L1-5 D3-6 L7-6 L8-5 L9-5 D2-4 X1-4
bodice&sleeveSeam L4-4 L6-8 L7+8
bodice&small SH4-4 B2-3 W1+10 W2-11 W3-3 L1-3 X2-6
bodice&twist W1-4 W2-4 L4-8 X1+10
bodice&wavy B8-4 A2-3 W2-3 L7+4
bodice&whole W1+3
bone N1-3 N2-4 N4-3 N5-5 N6-5 N7-7 N8-5 SH1-6 SH2-5 SH4+4 SH7-4 SH8-3 B1-3 B2-7 B3-4 B4-5 B6-3 B7-3 B8-4 B10-5 B11-4 B12-4 B14-5 B15-4 A1-5 A3-5 A4-4 A5+4 K1-3 K3-5 K4-4 W1-7 W3-4 W5-4 W6-4 W7-4 W8-3 W9-3 W10-4 L1-4 L3-6 L4-4 L5-4 D3-4 L6-3 L7-4 L8-5 L9-4 D1-4 D2-4 D4-4 D5-6 D7-5 X1-4 X2-4 X4-3
bone&shoulderSeam N6-4 SH1-5 SH2-3 SH4+5 SH5-10 SH7-3 B2-3 A5-3 K3-3 W1-5
borrowed N5-5 N6-3 SH1-4 SH2-4 SH3+8 SH4-7 SH5-4 SH6-4 SH7-5 SH8-4 D1-4 D2-3
borrowed>shoulder SH3+3
bothSides N1-4 N5+7 SH3-3 SH8-4 B10+3 B14-3 L1+7 L3-4 L4-3 D2-5
bothSides&down SH2-5 L1+5 D2-4
bothSides&fold B10+4 L1+5 L3-3
bothSides&neck N1-3 N5+5 B15+3
bothSides&oneShoulderLow SH8-3 B15-4 L1+6 L3-6 L4-3 D2-3
bothSides&pull SH2+3
bothSides&shoulderTip SH2-5 L1+5 D2-4
bothSides&show N5+5
bothSides&sleeve SH2-5 B15-4 L1+8 L3-5 L4-3 D2-5
bothSides&strain N5-4 B15+3 L1+5 L3-3 D2-5
bothSides&strap N1-3 N5+6 B15+3
bothSides&tight L1+5 L3-4 D2-4
bothSides&upright B10+4
bra N5-4 B5-6 B7-5 B8+12 A1-4 A2+6 L5-3 D3-4 D4-4 D6+7
bra&fold D6+4
bra&grip D6+3
bra&placket B8-4 B12+6 D6-4
bra&reach N5-4 B8+8 A2-6 K1-4 D6-5
bra&show B8+12 A2+6 D3-3 D6+7
bra&side N5-4 B8+9 A2-8 D6-11
bra&sleeve B8-7 D6+4
bra&underarm B8-11 A1-7 A2+9 D4-6
bra&wavy D6+4
breathe W3+5
breathe&cannot W3+5
breathe&tight W3+4
breathe&waist W3+5
broadBack N2-5 N3-3 N4-3 N5-4 N6-3 N7-5 N8-4 SH2-5 SH3-3 SH4-4 SH6-3 SH7-3 B1-7 B2-3 B4-3 B6-4 B7-3 B8-3 B10-4 B11-6 B12-4 B15-4 A1-6 A3-4 A4-5 A5-3 K1+8 K2-4 K3-5 K4-4 K5-4 K6-4 K7-3 W3-6 W5-3 W6-3 W7-4 W8-3 W9-5 W10-4 W11-3 W12-3 L3-7 L7-4 L8-6 D2-5 D5-4 D7-6 X1-3 X2-8 X4-4
broadShoulders N1-8 N2-9 N3-9 N4-9 N5-12 N6-9 N7-9 N8-9 SH1-12 SH2-12 SH3+6 SH4+16 SH5-10 SH6-11 SH7-11 SH8-12 B1-8 B2-10 B3-7 B4-8 B5-8 B6-10 B7-9 B8-8 B9-8 B10-11 B11-10 B12-8 B13-9 B14-9 B15-9 A1-9 A2-8 A3-8 A4-10 A5-8 K1-10 K2-9 K3-8 K4-10 K5-8 K6-8 K7-9 W1-10 W2-9 W3-9 W4-9 W5-9 W6-8 W7-8 W8-9 W9-10 W10-8 W11-8 W12-9 L1-9 L2-9 L3-8 L4-9 L5-8 D3-9 L6-9 L7-8 L8-9 L9-9 D1-9 D2-10 D4-8 D5-8 D6-11 D7-9 D8-8 X1-9 X2-9 X3-9 X4-9
broadShoulders&sleeve SH3+6 SH4-3 L1-4 L4-3
bubble N8-4 B1-4 B4-7 B5-5 B6-4 B7+14 B15-3 W2-3 W12+9 L1-3 L2+10 L6-4 L7-3
bubble&dart B4-4 B7-5 W9-4 W12+7
bubble&dartTip B4-5 B5-4 B6-3 B7+17 W12-8
bubble&fishEye B7-11 W12+8
bubble&loose L2+4
bubble&seat B7-4 W9-5 W12+4
bubble&sleeve SH4-3 SH7-4 B7-7 W12-6 L1-3 L2+12 L3-5 L4-7 L5-3 L6-8 L7-5 D1-5 D2-5 D5-3 D6-5 D8-4
bubble&sleeveCap B7-5 W12-4 L1-7 L2+8 L7-6 D5-3
bubble&small B7+6
bubble&tip N5-3 N8-5 B7+4 L2-4
bubble&waist B7-3 W2-7 W4-3 W12+7
bubble&waistDart B7-7 W12+5
bulge SH5-3 B4-6 B5-4 B6-4 B7-6 K7+4 W2-5 W6-6 W8+6 W10-4 W12+12
bulge&fishEye B4-4 B7-4 W10-3 W12+9
bulge&forward W6-6 W8+7 W12-4
bulge&sideSeam W6-6 W8+7 W12-4
bulge&waist W2-6 W12+6
bulge&waistDart W12+6
bunch N1-4 N3-7 N4+8 N5-3 SH5+3 A1-3 A2-3 A5+9 K3-3 W1-4 D2-4 D4+7
bunch&centre W2+7
bunch&chest B3-4 B10-4 B11-4 A5+5 D4-4
bunch&cutInSleeve D4+5
bunch&dartTip N4-3 B4-5 B5-8 B6-6 B7+11 A5-7
bunch&fold N4+5 A5-4 D4+5
bunch&forward SH5-4 SH6+6
bunch&front B14+7 D5+4
bunch&frontArmhole B8-7 B10+4 A5+8 D4-6
bunch&hip A5-3 W2-5 W9+5
bunch&lowerBack N4-4 A5-5 K2+13 K6-7 D4-3
bunch&misses N4-4 SH8-5 B2-5 B5+6 A5-4 K3-4 W1-5 W9-3 L1-4 L9-3 D5-3 X4-3
bunch&nape N3-11 N4+11 N8-4 K7+5
bunch&neck N1-8 N2+4 N3-4 N4+8 N5-8 N6-6 SH5-3 SH8-4 B7-3 B15-4 A5-7 K2-4 K3-5 K5-4 K7-5 D4-6 D5-3
bunch&oneSide N4-3 SH8+7 A5-3 L2-4 L4+4 D5-3
bunch&peak N4-3 SH3-3 SH7-6 L2+4 L4-4
bunch&shoulderSeam N6-3 SH5-4 SH6+6
bunch&shoulderTip N2-3 N4-3 SH3-3 SH7-5 L2+4 L4-4
bunch&slant SH1+7 A2+6 A5-4 D4-5
bunch&sleeve N4-5 SH3-3 SH5-3 SH7-5 SH8-4 A5-5 L1-4 L2+6 L3-4 L4+5 L6-4 L9-3 D1-5 D2-3 D6-4
bunch&sleeveCap L2+8
bunch&small N2-5 N4+4 K7-5
bunch&swing SH1+3 W1-3 W2+3
bunch&tight N2-6 N4-5 SH8-3 B1-5 B7-3 B15-3 A1-4 A5-7 K1-4 K2-4 W2-3 W4-3 W9-4 L3-7 L7-3 L8-4 D2-3 D4-4 D5-3 X2+7
bunch&underBust N4-3 B13+5 B14+9 A5-9
bunch&underarm N4-3 A1-8 A2-9 A5-11 D4+17
bunch&up N4+7 N8-5
bunch&upperBack N2-5 N4+6 N6-3 N7-4 SH1-3 A4-5 K5-4
bunch&upperChest B9+10 B11-7 A4-3 A5-6
bunch&upright N4-5 SH5-7 B10+9 B13+5 B14-4 A4+8 A5-9 K2-6 K5-5 K6+4 W2-3 W3-3 W4+4 D4-6 D5-3
bunch&waist N4-3 A5-4 K6-5 W1-11 W4+7 D4-5
bunch&whole A5-5 L4-5 D5+7
burst N2-5 N7-5 SH2-3 SH5-4 B1-6 B3-3 B6-3 B11-6 B12+10 B15-3 A1-3 A3-3 A4-5 A5-3 K1+7 K3-7 K4-5 K5-4 W3-3 W7-3 L3-4 L8-3 D7-4 X2-4
burst&chest B1-5 B11-4 B12+5
burst&placket N2-5 B1-5 B11-5 B12+10 K1-5
burst&upperBack K1+5
bust B1+13 B3+10 B5+4 X2-3
bust&bustDart B1-4 B3-3 B4+6 B6-7
bust&choke B1-4 B13+5
bust&dart B3-4 B4+6 B7-3
bust&dartTip B1-3 B7-3
bust&dig B1+8 B3-8 B13-3 A1-4 D7-3
bust&empty B1-4 B3+6
bust&extra B1-5 B3+7 B6-3
bust&fold SH8-3 B1-3 B3+6 B5-3 B6-4 A5-4
bust&forward B3-4 W6-6 W8+6
bust&front N5+5 SH3-6 SH4-3 B3-8 B5+5 B6-4 B12+3 B13-5 W5-3
bust&fullBust B6+5
bust&gape B5-4 B8+3 B13+6
bust&grip B1+7 B3-6 B6-3
bust&hang B1-4 B13+5
bust&long B2+3
bust&loose B1-9 B3+9 B6-4 X3-6
bust&low N8-4 B1-4 B2-3 B3-6 B5+6 B14-3 A2-4 W2-4 W5-5
bust&misses N5+6 SH4-3 SH7-4 SH8-3 B3-4 B5-5 B15-5
bust&narrow SH4-5 B1+5 B3-8 B5-3 B6+4 B11-6 B15-3 K1-5 D7-4 X2-5
bust&neck N2-7 N5-5 B1-6 B15+9
bust&neckSide B1-7 B15+5
bust&oneShoulderLow SH8-5 B1-6 B3-5 B15+6
bust&open B1-5 B3-5 B12+6
bust&outward B2+6 B3-6 B5-4 B15-5 K4-3 W3-3
bust&past B4+5 B6-8
bust&pinch B1+5 B3-6
bust&placket B1-5 B3-4 B12+5
bust&pointy B4+5 B5-4 B7-3
bust&pull B2+4 B3-4 B6-4 B15+4
bust&rise B1-4
bust&sag N5-3 SH3+3 SH8-5 B1-6 B3+4 B5-4 K5-3 W5-4 W11-3
bust&short SH4-3 B15+5
bust&shoulder N5+6 SH2-4 SH4-7 SH7-4 SH8-4 B1-8 B2-4 B3-4 B5-5 B6-4 B15+6 D2-4
bust&shoulderSeam B1-6 B15+8
bust&side B1-3 B2+6 B15-4 W3-4
bust&sideSeam W6-5 W8+6
bust&slant B2+8 B15-6 K4-3
bust&small B1+10 B3-10 B6-5 B15-3 X2-8
bust&smallBust B3+3
bust&stickOut B4+6 B5-4 B6-6
bust&strain N2-3 N5-4 B1+9 B3-5 B15+6 W8-5
bust&swing B1-3 B4-4
bust&tight B1+8 B6+4
bust&tilt B2+4
bust&tip B4+3
bust&underBust B1-3 B2-3 B3-7 B6-4 B14+3
bust&up B2+4
bust&upperChest B1-6 B3-4 B5+6 B9+4 B11-4 B15-4
bust&waist B1-3 B2+3 W3-5
bust&wavy B1-4 B8+6 B9+4
bust&wide B1-4 B13-3
bustDart B1-5 B4+8 B5+11 B6+9 B7-4 B13-4 B14-3 W12-4
bustDart&dartTip B5+6
bustDart&fullBust B1-4 B3-3 B4+6 B6-7
bustDart&high B4-3 B5+7 B6-4
bustDart&inward B4-7 B5-7 B6+9
bustDart&long SH3-3 B4+15 B5-13 B6-7 B14-5 K5-4 W2-5 W12-6
bustDart&low B4-8 B5+11 B6-5 W12-3
bustDart&misses B4-5 B6+10
bustDart&narrow B4-3 B5-3 B6+5
bustDart&outward N5-3 B4-10 B5-7 B6+9
bustDart&past B4+8 B5-9 B6+4
bustDart&reach B1-3 B3-4 B4+5 B5-6 B6-5
bustDart&sit B5+6 B9-4
bustDart&stickOut B4+6
bustDart&swing B4+6 B5-4
bustDart&tight B1-4 B3-3 B4+6 B6-7
bustDart&tip B5+4 B6-3
bustDart&underBust B4-7 B5+9 B6-6 B13-7 B14-4
bustDart&upperChest B4-3 B5+6 B6-4 B9-4
cannot N1-5 N2+4 N3-4 N4-3 N5-4 N6-4 N7-5 N8-4 SH1-4 SH2-4 SH3-5 SH4-4 SH5-3 SH6-5 SH7-4 SH8-4 B1-3 B2-3 B3-3 B4-4 B5-3 B6-3 B8-5 B9-4 B10-4 B11+5 B12-4 B13-4 B14-3 B15-3 A2-5 A3-4 A4-5 A5-4 K1+14 K2-4 K3-4 K4-4 K5-4 K6-3 K7-4 W1-4 W2-4 W4-4 W5-3 W6-3 W7-3 W8-4 W10-6 W11-3 W12-4 L1-4 L2-4 L4-5 L5+10 D3+10 L7-6 L9-4 D1-6 D2-4 D5-4 D6-5 D7-4 D8-4 X1-4 X2-4 X3-8 X4-4
cannot&cutInSleeve L5-7 D3+12
cannot&dartTip B7+6
cannot&dig B7+6
cannot&down W9+6
cannot&ease L3-4 L4-3 D3-6 L6+7 L7-8
cannot&flat B7+6
cannot&fold L5+5 D3+6 D8-4
cannot&front K1-5 L5+4 D3+3
cannot&grip K1+3 L3-5 L5+4
cannot&hip W9+7
cannot&low A2-3 L5+5 D3-4
cannot&reach N1-3 N2-5 N4-3 N5-4 N6-3 N7-3 N8-6 SH2-4 SH3-3 SH5-6 SH6-4 SH7-3 SH8-3 B1-3 B2-4 B3-4 B4-5 B6-3 B7-5 B8-5 B9-4 B10-6 B11-9 B12-4 B13-4 B14-4 B15-4 A1-5 A2-6 A3-4 A4-3 A5-4 K1+17 K2-4 K4-5 K5-3 K6-4 K7-5 W1-4 W2-4 W3-4 W4-4 W5-4 W6-4 W7-3 W8-4 W9-5 W10-4 W11-4 W12-4 L1-4 L2-4 L4-4 L5-7 D3-6 L6-5 L8-5 L9-4 D1-4 D2-4 D4-5 D5-3 D6-4 D7-4 D8-4 X1-3 X2-4 X3-9 X4-4
cannot&seat W9+5
cannot&shoulderBack N1-4 N2-6 N3-5 N4-5 N5-5 N6-5 N7-5 N8-5 SH1-6 SH2-6 SH3-5 SH4-6 SH5-7 SH6-5 SH7-5 SH8-6 B1-4 B2-5 B3-4 B4-4 B5-4 B6-4 B7-5 B8-4 B9-4 B10-3 B11+13 B12-4 B13-4 B14-4 B15-5 A1-6 A2-4 A3-5 A4-8 A5-4 K1-10 K2-6 K3-7 K4-5 K5-6 K6-5 K7-4 W1-4 W2-4 W3-5 W4-4 W5-4 W6-4 W7-5 W8-4 W9-6 W10-4 W11-4 W12-4 L1-4 L2-4 L3-6 L4-4 L5-9 D3-8 L6-6 L7-3 L8-6 L9-4 D1-4 D2-4 D4-5 D5-5 D6-4 D7-4 D8-4 X1-4 X2-5 X4-4
cannot&sit N2+3 N5-3
cannot&sleeve K1-4 L4-4 L5+10 D3-5 L6+5 L7-6 D6-5
cannot&sleeveCap L5-3 D3+3 L6+3
cannot&tight W3+3 L5-4 D3-5 X2+4
cannot&waist W3+5
cannot&wavy L5+5 D3+6 D8-4
cannot&whole N2-4 N4-3 N6-4 N7-4 N8-3 SH3-4 B7-3 B9-3 B11-4 B15-3 A1-4 A3-3 A5-4 K1-6 K2-3 W1-4 W2-4 W9-4 W11-4 L3-4 L5-7 D3-7 L6-4 L8-4 D2-5 D4+8 D5-5 X1-5 X3-7 X4-4
catches N1-5 N2-5 N3-5 N4-5 N5-5 N6-5 N7-6 N8-5 SH1-5 SH2-5 SH3-7 SH4-5 SH5-5 SH6-5 SH7-6 SH8-6 B1-5 B2-6 B3-5 B5-5 B6-4 B7-4 B8-6 B9-5 B10-5 B11-5 B12-5 B13-5 B14-5 B15-5 A1-5 A2-5 A3-6 A4-5 A5-5 K1-5 K2-5 K3-5 K4-5 K5-6 K6-5 K7-6 W1-6 W2-7 W3-5 W4-4 W5-5 W6-6 W7-5 W8-6 W9+12 W10-6 W11-6 W12-6 L1-7 L2-7 L3-6 L4-7 L5-6 D3-7 L6-6 L7-6 L8+6 L9-6 D1+6 D2-6 D4-5 D5-7 D6-6 D7-6 D8-6 X1-7 X2-5 X3-6 X4-5
catches&elbow SH3-4 W9-4 L8+7 D1-4
catches&hip W2-5 W9+6
catches&seat W9+7
centre N1-4 N2-5 N4-5 N5-6 N6-4 N7-6 N8-7 SH1-5 SH2-5 SH3-5 SH4-4 SH5-5 SH6-4 SH7-4 SH8-6 B1-5 B3-5 B4-5 B5-9 B6-3 B7-4 B8-6 B9-5 B10-5 B11-5 B12-4 B13-5 B14-7 B15-4 A1-5 A2-5 A3-4 A4-6 A5-6 K1-6 K4-5 K5-4 K6-6 K7-4 W1+5 W2+5 W3+13 W4+16 W5+4 W6-5 W7-5 W8-6 W9-5 W10-5 W11-5 W12-4 L2-4 L3-5 L4-5 L5-4 D3-5 L6-4 L7-4 L8-5 L9-10 D1-4 D2-4 D4-4 D5-5 D6-5 D7-5 D8-5 X1+12 X2-6 X3-11 X4-4
centre&down W5+5
centre&extra W2+4
centre&fold B2+3 A5-3 K2-3 W1-4 W4-3 W5-5
centre&forward N8-4 W2-6 W5+7
centre&front N8-5 SH8-3 B14-5 A5-5 W1-4 W3-4 W4-5 W5+9 W6-4 W10-3 X1+11
centre&frontWaist W1-4 W2-6 W5+5
centre&gape N3-3 N6-4 B8-5 A3-3 W4+7 D1-4 X1-4
centre&high B5-4 A1-3 K3-4 W1+6 W2-4 W3-4 W4-5 L9-3 X1-4
centre&loose N1-4 N3-3 SH1-4 SH8-3 B2-3 B3-5 B6-3 B8-5 B13-6 B14-3 A4-4 K2-3 W1-4 W3-7 W4+13 L2-3 X1-7 X3-9
centre&low N8-6 SH3-5 SH8-4 B2-5 B5-5 A2-6 K5-5 W1-5 W2+10 W3-8 W4-8 W5+5 W11-3 L1-7 X1-6
centre&outward B2-3 B6-5 W1-3 W2-3 W3+5 W4-6 W8-4 X1+4
centre&rise B2+5 W1+4 W2-5 W3-3 W4-4 W5-4 W10-3 L1+6 D3-5 L9-6 D6-4 D7-4 D8-5 X1-7
centre&sCurve B2-4 K3-4 W3-5 W4-3 W5-3 W8-4 L4-4 X1+6
centre&sag B2-4 B14-5 W2-3 W4+4 W5+6 X1-5
centre&seam W3-5 W8-5 X1+5
centre&sit W1+3 W3-6 W4-4
centre&slant B2-5 A5-3 K4-3 X1+5
centre&sleeveHem B2-6 K3-4 W1-5 L1+7 D3-4 L9-6 D6-4 D7-4 D8-5
centre&swing N7-3 SH5-4 B2-4 A4-3 K1-4 K3-4 K5-3 W5-5 W7-4 X1+9
centre&tight N2-4 SH2-4 B1-5 B6-4 A1-4 K1-5 W1-4 W2-5 W3+11 W4-7 W5-5 W9-3 L3-6 L8-4 D2-3 D7-4 X1-5 X2-8
centre&tilt A5-3 K3-4 K4-3 W5+6 W6-3 W7-3 X1+4
centre&uneven B2-4 W5-4 X1+5
centre&up B2+3 K3-3 W1+6 W3-4 W4-4 W5-4 X1-7
centre&waist W3-5 W4-4
chest N2-4 N5-4 N6-3 N7-3 SH2-4 SH3-5 SH4-4 SH5-3 SH6+3 SH8-4 B1+11 B3+7 B5-3 B6-4 B8-4 B9-6 B10+5 B11+5 B13-4 B15-6 A1-4 A4-5 A5+3 K1-4 W2-3 W3-4 W4-4 W5-4 W6-4 W9-3 L3-4 D3-3 L8-3 D4-4 D6-3 D7-4 X2-6 X3-7 X4-3
chest&dig B11+4 A5-3
chest&empty SH6-4 B1-6 B3+8 B9-6 B10-5 B11-3
chest&extra B3-5 B9-4 B10+7 A4-3
chest&fold B1-4 B11-4 A5+4
chest&frontArmhole B11+4 A5-3
chest&gape N1+7 N6-3
chest&loose N1-4 B1-5 B3+10 B8-4 B9-10 B11-6 B13-4 W4-4 X3-9
chest&narrow SH4-3 B1-9 B6-4 B10-6 B11+10 A5-4
chest&neck N1+7 N6-3
chest&placket B1-5 B11-4 B12+5
chest&shoulderSeam SH3-7 SH5-4 SH6+8 B1-5 B9-4 B10-4
chest&small N2-4 SH4-3 SH6-5 B1+4 B3-5 B9-5 B10-5 B11+5 B15-3 A1-3 W3-3 L1-3 X2-7
chest&strain B1+5 B10-4 B15-3
chest&tight N2-4 SH2-5 SH6-4 B1+12 B3-5 B9-5 B10-5 B11-12 B12-4 B15-6 A1-5 A5+4 K1-5 W3-5 W9-3 L3-6 L8-5 D2-4 D7-5 X2-6
chest&upperChest B10-5
chest&upright B3-9 B9-4 B10+8 A4-4
chest&wide N5-6 SH3-3 B1-7 B3-10 B6-5 B9-8 B10+10 B11+4 B13-3 A4-6 W4-4 D6-4 X3-5
choke N1-6 N2+27 N3-5 N4-5 N5-6 N6-4 N7+6 N8-7 SH1-5 SH2-4 SH4-5 SH5-5 SH6-5 SH7-5 B1-5 B2-6 B3-7 B4-4 B5-5 B6-5 B7-4 B8-6 B9-5 B10-6 B11-5 B12-4 B13-3 B14-4 B15-5 A2-3 A3-5 A5-5 K1-5 K2-5 K3-6 K4-5 K7-5 W1-5 W2-4 W3-4 W4-5 W5-6 W6-4 W7-6 W8-5 W9-5 W10-5 W11-6 W12-4 L1-5 L2-5 L3-5 L5-5 D3-6 L6-5 L7-4 L8-5 L9-4 D2-6 D4-6 D5-6 D6-5 D8-6 X2-5 X3-3 X4-4
choke&cutInSleeve L4-4 D1-4 D5+7
choke&fold SH1+3 A4-4 D5-6
choke&forward D1-3 D5+4
choke&front N1-4 N2+12 N3-3 N4-3 N7+4 N8-4 SH3-3 SH6-5 SH8-4 B2-8 B8-3 B10-5 B11-5 B13-4 A1-4 A2-3 A4-4 A5-6 K5-6 K6-4 W5-7 W6-5 W10-5 L4-5 L9-3 D5-5 D7-3 X1-5
choke&fullBust B1-4 B13+5
choke&hang N2-6 B3-3 L4+3 D4-3 D8-3
choke&hem W6+4 W10-3 X1-4
choke&long SH3+3
choke&loose N1-5 N2+7 B3-3 B6-3 B8-4 B10-4 A2-4 A4-5 K6-3 X1-3 X3-8 X4-3
choke&neck N1-4 N2+6 N3-3 N5-5
choke&pull N2-4 N7+5 K1-4
choke&rise N7+5 K3-5
choke&sCurve N7+4
choke&sag N2-5 N7+8 B14-3 K5-5 W5-4
choke&seat W6+3
choke&shoulder SH1-3 SH3+6 SH4-4 X3-6
choke&sideSeam W6+5
choke&sit N2+11 N5-5 N7-6 SH5-3 SH8-4 B5-4 B9-4 B12-3 A1-4 A4-3 W1-5 W2-4 W9-4 L4-4 D7-3
choke&sleeve L2-4 L4+8 D1-4 D5-6 D6-3
choke&sleeveCap D5+4
choke&sleeveHem N2-3 A1-3 L4-4 D1-3 D5-4 D6-4 D7+5 D8-5 X1-4
choke&slide N2-4 N7+8 N8-3 SH2+3 D5-3
choke&tight B1-4 B13+5
choke&underBust N2-4 B13-4 B14+6
choke&uneven N2-4 SH8-4 B13-3 A4-3 K6-3 L4-5 D5-7 D8-4 X1+5 X3-4
choke&upperBack N7+6 A4-4 K3-6 K5+3
choke&whole N2-3 L4-3 D5-5 X1-4 X2-5 X3+6
choke&wing N2-4 SH1-7 SH3-3 SH8-4 B8-3 B13-4 A1-3 A2+4 A4-3 K6-4 L4-4 D1+5 D4-6 D5-4 X3-5 X4-4
collar N1+8 N2+6 N3-5 N5+8 N7-3 N8-6 B8-3 B10-4 A4-3 K3-5 K7+3 X2-3
collar&extra N1-3 N3-6 N5+8
collar&fold N4+7
collar&gape N1+7 N3-8 K7-5
collar&hump N8-4 K7+4
collar&nape N5-3 N7-3 N8-3 K3-5 K7+5
collar&outward N5+5
collar&rise N3-7 N4-4 K3-5 K7+6
collar&short N4+7
collar&shoulder N5+4
collar&sit N5+5
collar&small N2+7 N3-6 N5-3 K7-6 X2-4
collar&wide N1-6 N3-8 N5+9 B10-4 K7-4
collarbone N1+4 N5-4 N8-4 SH3-5 SH5-4 SH6+5 B4-4 B5-6 B6+6 B9-4
collarbone&dart B5-5 B6+6
collarbone&gape N1+4
collarbone&swing B4-3 B5-3 B6+4
cup B3+7
cup&empty B3+3
cup&loose N1+3
cup&smallBust B3+7
cutInSleeve W11-5 L1-4 L2-7 L3-8 L4-4 L5-5 D3+11 L6-9 L9-4 D1+9 D2+11 D5+15 D7+4
cutInSleeve&dig SH4-4 D7+8
cutInSleeve&edge L3-4 D2-7 D5-4 D7+13
cutInSleeve&extra L2-6 D4+7
cutInSleeve&fold L2-3 L6-6 D5+5
cutInSleeve&forward N8-12 W6-5 L4-6 D1-3 D5+15
cutInSleeve&front D3+3
cutInSleeve&gape B8-3 D1+8
cutInSleeve&grip D7+8
cutInSleeve&hang L4-4 D1-4 D5+7
cutInSleeve&hem W11-10 D2-3 D5-3 D8+14
cutInSleeve&hung W11-6 D8+7
cutInSleeve&loose D3+4
cutInSleeve&pull L3-6 D3+3 D2+8
cutInSleeve&reach D3+3
cutInSleeve&rise D3+8 D2-5 D7-4
cutInSleeve&sag SH3-4 W11-8 D1+3 D8+7
cutInSleeve&shoulder SH3-7 SH4-9 D2+12 D7-4
cutInSleeve&shoulderTip SH2-9 D2+8
cutInSleeve&show N5-5 SH2-4 SH3-4 SH4-3 SH6-4 B8-4 L1-4 L2-3 L4-3 D3-4 D1-6 D5-7 D6+7 D7-5 D8-4
cutInSleeve&side D3+4
cutInSleeve&sleeve L3-6 L4-5 L5-5 D3+8 D1-4 D2+4 D6-5
cutInSleeve&sleeveCap L1-5 L2-12 L6-10 L7-4 D1+6 D2+3 D5+6
cutInSleeve&slide N7-11 N8-9 L4-3 D1-3 D5+10
cutInSleeve&stickOut D1+12 D2-3 D5-6
cutInSleeve&stickUp L2-10 D1+11 D2-3 D5-5 D7-3 D8-3
cutInSleeve&strain SH2-6 SH4-4 L3-4 D2+10
cutInSleeve&swing N8-6 W6-4 W7-5 L4-6 D1-4 D5+14 D7-4
cutInSleeve&tight N2-4 SH4-5 B12-5 K1-4 L1-5 L2-3 L3-9 D3+4 L7-5 L8-4 D1-6 D2+12 D5-6 D6-4 D8-3 X2-4
cutInSleeve&underarm L2-5 D4+8
cutInSleeve&uneven W11-6 L4-4 D3-4 L9-7 D1-5 D2-5 D5+6 D8+4 X1-5
cutInSleeve&upperArm L3-8 D2+9
cutInSleeve&wavy D8+9
cutInSleeve&wing D1+5
dart B3-3 B4+10 B5+9 B6+9 B13-5 B14-3 W2-4 W3-3
dart&dartTip B4-6 B5-5 B7+7
dart&fishEye B7-3 W12+5
dart&fullBust B4+6 B6-3
dart&high B2-3 B4-5 B5+9 B6-5 W1-4 W12-3
dart&inward B4-4 B5-4 B6+9 W12-3
dart&long SH3-4 B4+12 B5-12 B6-7 B7-5 B9-4 B14-6 K5-6 W2-9 W11-4 W12-5
dart&longWaisted B4-4 W2-6 W12+5
dart&low N8-3 SH8-3 B4-8 B5+8 B6-6 B7-4 A2-5 W2-4 W5-4 W12-5 L1-3
dart&misses B4-6 B6+5 B7+4
dart&narrow B4-5 B5-4 B6+7
dart&outward N5-5 B4-8 B5-5 B6+10
dart&past N5-3 B4+8 B5-7 B6+4 B7-3 W12-4
dart&pointy B4-4 B7+4
dart&seat B7-3 W9-5 W12+5
dart&sit B5+4
dart&small B4-4 B5-3 K2-3 K6+4 W3-4 X2-4
dart&smooth B5-4 B7+5
dart&stickOut B4+4 B6-5
dart&swing B4+8 B5-5
dart&tight B4+6 B6-3
dart&tip B4-6 B5-5 B7+7
dart&underBust B4-10 B5+12 B6-11 B7-5 B13-12 B14-7 W1-3 W12-6
dart&underarm B5-4 B6+4
dart&upperChest B5+5
dart&waist B4-3 W2-6 W12+6
dart&wide B3-4 B4-4 B5-3 B6+5
dartTip B5+9 B7+17 B13-3 A1-4 W12-10
dartTip&dig B7+6
dartTip&flat B7+6
dartTip&fold SH8-4 B4-7 B5-6 B6-5 B7+6 A5-4
dartTip&fullBust B1-3
dartTip&inward B4-4 B5-6 B6+6 B7-5
dartTip&misses B5+6 B6-8
dartTip&outward B5-8 B6+6 B7-7
dartTip&past B4+8 B5-8 B6-6 B7-4
dartTip&peak SH7-5 B4-5 B5-6 B6-5 B7+7 L7-3
dartTip&pointy B4+5 B6-5 W12-5
dartTip&pucker B4-7 B5-7 B6-5 B7+12 W12-4 L6-5
dartTip&small B6+5 X2-4
dartTip&smooth B5-4 B7+5
dartTip&tight B1-3
dartTip&tip B6-4 B7+4
dartTip&underBust B4-6 B5+9 B6-7 B7-6 B13-5 B14-4
dartTip&underarm SH1-5 B4-4 B5+3 B6+6 B7-7 A1-7 A2-6 L1-3 D4-5
dartTip&upperChest B4-6 B5+9 B6-6 B7-7 B9-6
dartTip&wavy B4-6 B5-9 B6-8 B7+11 D8-6
dig SH2-3 SH4+5 SH7-4 B8-4 B11-4 A1+9 A2-4 A5+9 L7-3 D7+8 D8-3
dig&edge D2-4 D7+8
dig&elbow A1-4 L3-4 L8+9 D7-4
dig&flat B7+6
dig&front N1-4 SH4-3 SH5-4 SH6-3 B2-3 B8-3 B11-3 A1-6 A5+6 L3-4 D7-4
dig&frontArmhole N2-3 SH4-5 B8-9 B10-4 A1-16 A5+12 L7-4 D7-4
dig&frontHem N2-4 N7+5
dig&frontNeck N1-7 SH5-4
dig&misses B1-4 B6-4 W1-3 W3-5 W4+6
dig&nape N2-4 N4-6 N8+6 K7-3
dig&narrow B11+4 A5-3
dig&neck N1-4 SH5-3
dig&pinch N1-5 N4-3 SH1-6 SH3-3 B1+3 B3-5 B8-3 B13-4 A2-3 A4-3 A5-3 K1+3 K4-4 K6-4 W3+6 W4-9 L8+3 D6-3
dig&sag N2-4 N7+7
dig&shoulder SH1-3 SH3-7 SH4+12 SH7-8 A1-13
dig&show L3-6 L8-4 D6+8 D7-4
dig&sleeve A1-3 L1-4 L4-4 L8+4 D1-3 D2-4 D6+6 D7-7
dig&sleeveHem A1-4 L1-4 L3-7 L8-4 L9-8 D2-6 D6-8 D7+12 D8-11
dig&throat N2+6 N7+6
dig&tight L3+5 L8-3 D7-4
dig&tummy W10+6
dig&twist X1+5
dig&underarm SH4-3 A1+10 A2-8 A5-6 D4-6
dig&up N2-5 N3-5 N4-3 N7+4 N8+7
dig&upperArm L3+6 D7-3
dig&waist N2-3 B1-4 B6-3 A1-4 K6-4 W1-7 W2-7 W3+9 W5-3 D7-4
down SH1-5 SH5-4 SH6-4 SH7-3 SH8-4 B1-3 B2-5 B3-6 B4-6 B5-3 B8-4 A1-3 K1-5 K3-5 K5-5 W2-4 W7-3 W10-3 W11-4 L3-4 L7-4 D2-4 X3-5
down&front B14+5 X1-6
down&loose N8-5 SH1-6 SH2+5 SH3-5 SH6-5 SH8-5 B1-4 B3-6 B4-4 B5-3 B6-3 B8-3 B13+5 B14+4 B15-3 A2-4 W4-4 W5-3 L1-3 X1-4 X3-7
down&past SH3-8 A1-3 A2+9
down&pull N7-9 N8+7 K1-7
down&sag N8-4 SH1-3 SH3-4 SH8-4 B8-3 B13-4 B14+6 A2+5 W5-6 X3-4
down&seat W9+5
down&shoulderTip SH2-5 L1+5 D2-4
down&slant X1-4
down&sleeve SH2-4 L1+5 D2-4
down&sleeveSeam SH3+5 L4-3
down&strain L1+3 D2-5
down&tilt SH1-3 SH2+5 SH3-4 SH6-4 W5+4 X1-6
down&uneven W5+4
down&upperArm SH3+6 A2-5 L1-3 L3-5 L6-3
down&waist W5+3
ease N1-3 N2-4 N3-4 N4-4 N5-3 N6-4 N7-3 N8-3 SH1-4 SH2-3 SH3-4 SH4-4 SH5-4 SH6-3 SH7-4 SH8-3 B1-4 B2-3 B3-4 B4-3 B5-3 B6-4 B7-4 B8-4 B9-4 B10-4 B11-4 B12-3 B13-4 B14-3 B15-3 A1-4 A2-3 A3-4 A4-4 A5-4 K1-4 K2-4 K3-3 K4-3 K5-3 K6-4 K7-4 W1-3 W2-4 W3-3 W4-4 W5-3 W6-3 W7-3 W8-4 W9-4 W10-3 W11-5 W12-4 L1-12 L2-9 L3-8 L4-10 L5+3 D3-8 L6+18 L7+5 L8-5 D1-7 D2-4 D4-4 D5-6 D6-8 D7-5 D8-6 X1-3 X2-4 X3-3 X4-4
ease&fold L2-3 L4-5 L6+6 L7-4 D5-4
ease&sleeve W11-4 L1-7 L2-4 L3-6 L4-7 L5+5 D3-7 L6+4 L7+6 L8-3 D1-4 D5-4 D6-6 D8-4
ease&sleeveCap L1-10 L2-8 L5-3 L6+12 D1-3 D7-3
ease&small L1-6 L6-9 L7+9 X2-4
edge A4-6 L3-3 D1-3 D2-7 D5-4 D7+11
edge&front B8+3
edge&frontArmhole B8+4 B10-4
edge&grip D7+9
edge&loose B10-3 A3+3 A4-7
edge&tight D2-5 D7+6
elbow N1-3 N2-6 N3-4 N4-3 N5-3 N6-4 N7-4 N8-4 SH1-3 SH2-5 SH3+5 SH4-6 SH5-4 SH6-4 SH7-3 B1-7 B2-4 B3-3 B4-7 B5-6 B6-7 B7-5 B8-4 B9-3 B10-3 B11-6 B12-5 B13-4 B14-4 B15-5 A1-6 A2-3 A3-4 A4-4 A5-4 K1-6 K2-3 K3-4 K4-5 K5-3 K6-4 K7-4 W1-4 W2-3 W3-7 W4-3 W5-4 W6-4 W7-4 W8-3 W9-5 W10-5 W12-5 L1-5 L2-4 L3-8 L4-8 L5-4 D3-4 L6-5 L7-6 L8+24 D1-5 D2-5 D4-3 D5-4 D6-5 D7-7 D8-6 X1-4 X2-8 X3-4 X4-4
elbow&grip A1-3 L8+9
elbow&hem W11+3
elbow&pinch L8+5
elbow&pull L8+7
elbow&sleeve L3-3 L8+5
elbow&sleeveHem L9+5 D8-4
elbow&strain N2-4 SH2-4 SH3-4 B1-5 B11-5 B12-4 B15-4 A1-4 K1-4 K4-4 W3-5 W9-4 L3-4 L8+11 D2-3 X2-6
elbow&tight N2-4 SH2-3 SH3-4 B1-5 B2-3 A1-4 K1-5 W3-4 W9-3 L3-5 L8+12 D2-3 D7-3 X2-7
elbow&uneven SH8+4 L8-4 D8-4
empty N1-5 N6-3 SH1+3 SH2-6 SH3-9 SH4-4 SH5+3 SH7-3 SH8-4 B1-5 B2-6 B3+14 B4-6 B5-8 B6-9 B7-3 B8-6 B9-7 B10-10 B11-4 B13-4 B15-3 A4-6 A5-8 K2-3 K6-3 W4-7 L1-5 L3-4 L4-4 L6-6 L7-3 D1+5 D2-3 D4-4 D5-5 D6-4 X3-5 X4-3
empty&fold N1-3 SH1-4 SH5+7 SH6-4 SH8-4 B3-4 B8-4 B10-5 B14-4 A4-4 A5-6 K2-4 D1-5 D4-4 D5-4
empty&front B2-6 B3-3 W3-3 W4-6 W5+6
empty&fullBust B1-3
empty&sleeveCap B3-5 L1-7 L4-3 L6-6 L7-4 D1+5 D6-4
empty&smallBust B3+7
empty&tight B1-3
erect N1-10 N2-9 N3-11 N4-10 N5-9 N6-10 N7-11 N8-10 SH1-10 SH2-10 SH3-10 SH4-10 SH5-10 SH7-10 SH8-10 B1-9 B2-9 B3-10 B4-9 B5-9 B6-9 B7-10 B8-9 B9-10 B10-10 B11-10 B12-9 B13-10 B14-9 B15-9 A1-9 A2-9 A3-11 A4-11 A5-10 K1-11 K2-11 K3-13 K4-9 K5+21 K6-11 K7-9 W1-9 W2-10 W3-9 W4-9 W5-10 W6-10 W7-10 W8-10 W9-9 W10-9 W11-10 W12-10 L1-10 L2-10 L3-9 L4-10 L5-9 D3-9 L6-9 L7-9 L8-9 L9-10 D1-10 D2-9 D4-10 D5-11 D6-9 D7-9 D8-9 X1-10 X2-9 X3-9 X4-10
erect&fold A4-3 K5+5
extra B1-4 B6-5 B9+5 B13+4 A1-4 A2-4 A4+7 K1-3 L1-3 L2+7 L6-5 D4+8 X3-4
extra&fold B10-4 B13-4 A4-6 A5+7 K5+4 K6-7 L2-4
extra&front N5-3 SH6-3 B2-5 B3+5 B4-3 B6-3 B8-3 B9-4 B10+6 B13-3 B14-4 A4-5 A5-5 K6-3 W4-4 W5-3 L2-4
extra&frontArmhole B8+4
extra&frontNeck N1+5 N5-3
extra&fullBust B1-3
extra&hang A2-5 D4+6
extra&lowerBack K2+5 K6-4
extra&nape N4+6
extra&narrowBack N1-4 N4-4 N5-3 SH1-4 SH3-4 B3-5 B8-4 B9-5 B10-5 B11-3 B13-6 A4+10 K1-8 K2-4 K3-4 K5-5 K6-5 W4-5 L2-6 D4-7 D5-3 X2-3 X3-6 X4-4
extra&neck N1+6 N2-5 N5+4 N6-3 B10+4 A4-4
extra&pinch B5-3 B8+4 B10-3 B13+4
extra&reach N5-4 B10+5 A4-4 A5+6 D4-4
extra&shoulder N5-3 SH3+6
extra&shoulderTip SH1+10 SH2-8 SH3-8 SH4-4 SH7-3 L2-3
extra&sit N4+4 K2+3
extra&slant A2+6
extra&sleeveCap A4-4 L1-9 L2+14 L7-5 D1-4 D6-4
extra&tight B1-3
extra&underBust N5-4 B3-5 B5-5 B9-4 B10-3 B13+12 A4-5 K5-3 L2-5 D4-5
extra&underarm SH1-5 B3-3 B13-4 A1-11 A4-4 A5-5 L2-5 D4+14
extra&upperBack A4+7 K1-6 K2-3 K3-6 K6+8 W4-9 D4-3
extra&upperChest B3-8 B9+13 B11-7 A4-3 D4-3
extra&upright N1-3 N5-4 B10+10
extra&waist B3-4 B13-3 A4-10 K2-3 K3-4 K5-5 K6+8 W1-6 W2-7 W3-10 W4+8 W5-6 L2-4 D4-6
extra&wide N1-4 N3-4 N5+7 SH3+4 B10+5
fine>nape N3+4
fishEye B4-5 B5-5 B6-4 B7-12 W2-5 W10-3 W12+16
fishEye&long W2-9 W12+6
fishEye&low W12+6
fishEye&stickOut B4-3 B5-4 B7-3 W12+12 D1-4
fishEye&tip W12+6
fishEye&waist W2-8 W4-4 W12+8
fishEye&waistDart W12+4
flat N1-9 N2-9 N3-9 N4-9 N5-9 N6-9 N7-9 N8-8 SH1-9 SH2-8 SH3-9 SH4-9 SH5-11 SH6-9 SH7-8 SH8-8 B1+11 B2-9 B3-9 B4-10 B5-10 B6-10 B8-8 B9-9 B10-9 B11-9 B12-9 B13-8 B14-9 B15-9 A1-10 A2-8 A4-9 A5-9 K1-9 K2-9 K3-9 K4-9 K5+5 K6-9 K7-9 W1-9 W2-9 W3-9 W4-8 W5-9 W6-9 W7-9 W8-9 W9-9 W10-9 W11-9 W12-9 L1+8 L2+4 L3-10 L4-9 L5-9 D3-9 L6-12 L7-11 L8-9 L9-10 D1-10 D2-10 D4-9 D5-10 D6-11 D7-10 D8-10 X1-9 X2-9 X3-8 X4-9
flat&sleeveCap B1-4 A3-3 K5-3 L1+12 L2-15 L6-8 L7-5 D1-3 D2-3 D7-3
fold SH8+7 A5+6 W2+3
fold&front SH8-4 B2-4 K5-4 W2-5 L1-4 L2-5 L3-6 L6-7 D1-3 D4-6 D5+7 D6-3
fold&frontArmhole SH1-4 SH8-5 B8-8 B10+6 A5+8 L7-3 D4-4
fold&frontNeck N1+7 N2-7 N4-5 SH8-4 A5-4
fold&frontWaist B14+4 A5-4 K2-4 K5-4 W1-5 W5-6 D5-4
fold&fullBust B6-4 B13+3
fold&hang SH1+4 SH8-3 A4-6 A5-6 D5+8
fold&hip W2-3 W9+9
fold&inward SH2+3 SH4-4
fold&long B2-3 B14+4 K2+5 K5-5 W2-4 W5-3
fold&loose K2+4 K5+5 X3-4
fold&lowerBack SH8-3 B10-5 A4-5 K2+4 K6+10
fold&nape N4+10 K7-6
fold&narrowChest B9-4 B10+9 B11-4 A4-5
fold&neck N4+5 SH1+8 SH2+3
fold&oneShoulderLow SH8-6 B8-3 B10+4 A5-4 L1+4 L3-3 L4-3
fold&oneSide SH8+16 A2-4 A5-6 K2-3 D5-3
fold&outward K2+4 K4+3
fold&peak B15+3
fold&pinch N4-4
fold&pointy B4-5
fold&reach SH8-4 B10+5 B11+7 A4-7 A5+4 K1-8 K5-3 K6-3 D4-5 X3-4
fold&realCloth N4-6 SH1-4 SH2-3 SH8-8 B3-4 B7-4 B9-6 B10-4 B14-4 A4-4 A5-10 K2-7 K5-5 W2-5 W4-3 W8-3 W9-3 L2-4 L4-4 D4-6 D5-4 X3-3 X4+17
fold&rise D3+5
fold&sag SH3-4 SH8-8 B3-5 B13+6 B14-8 A5-4 W2-3 W5+6 L1-5 L2+5 L6-5 D5-3
fold&seam K4+3 L2-4 L6+4
fold&short N4+4 K7-3
fold&shoulder SH3-3 L2+4 L3-4 D2+3
fold&shoulderSeam SH6+3 B15+4 A5-5
fold&shoulderTip N2-5 SH1-4 SH2+7 SH4-6 B9-6
fold&show D6+4
fold&side SH8+7 K4+3
fold&sideSeam SH8-6 B1+4 B15-3 W6-6 W7-6 W8+11 W11-3 L5-3 D3-4 D8-3 X1-4
fold&slant SH1+4 A2+3 A5+3 W5-4 L4+4 D4-5 D5-3
fold&sleeve SH2-5 SH8-8 B2-3 B10-3 B14-4 A4-4 K5-4 L2-8 L3-9 L4+10 L7-4 L9-6 D1-5 D4-6 D5+7 D6-5 D8-3
fold&sleeveCap SH1-3 SH8-5 A5-4 L1-3 L2+9 L4-6 L6+7 L7-3 D4-3
fold&sleeveHem D2+3 D6-3 D7-3 D8+5
fold&sleeveSeam A5-3 L4-4 L7+5
fold&slopingShoulders SH1+5 A5-4 D4-4
fold&swing SH1+4 SH8-4 B10+3 A5-4
fold&tight B9-4 B11+3 K5-4 D2+3
fold&tilt SH8-4 K2-3 W5-5
fold&toile X4+4
fold&underBust SH8-4 B3-4 B5-4 B9-4 B10-5 B13+5 B14+10 A4-3 A5-3 K2-4 K5-5 L2-3 D5-4 X2-3 X3-4
fold&underarm SH1+6 A2-7 A5+3 L4-7 D4+9 D5-6
fold&uneven SH8-5 W6-3 W8+7 L4-7 L9-5 D5+8 D8-3 X1-5
fold&up B2-5 K2-4 W1-5 W2+5 W4-4
fold&upperArm N4-3 SH3-3 B9-3 B14-4 A5-3 K2-3 K5-5 W2-4 L3+5 L4-4 L6-4 D5-3
fold&upperBack A4-14 K1-4 K2+5 K3-4 K5+8 W2-4
fold&upperChest SH2+7 B9+12 A5-3
fold&upright B10+10 B13+5 B14-4 A3-3 A4+12 A5-6 K2-12 K5-5 K6+11 W2-5 W4+5 X3+7
fold&waist B10-4 K2+4 K5-9 K6-5 W1-9 W2+10 W3-7 D4+6
fold&wavy W8+6 D8+4
fold&whole SH8-5 B10-8 B13-5 A4-6 A5-5 K5-4 K6-5 W2+4 L4-5 D4-5 D5+4 X1-3 X2-10 X3+12
fold&wing SH8+6
forward N5-4 N8+18 SH3-6 SH4-6 SH6+12 B1-4 K3-4 W2-5 W4-4 W5+4 W6+13 W7-6 L1-4 L3-4 L4+4 L7-3 L8-4 D2-4 D5+5 X1-5
forward&fullBust B3-4 W6-6 W8+6
forward&hang N8-7 D1-3 D2-3 D5+7
forward&hem W6+9 W7-5 W11-5
forward&loose N7-3 N8+6 W4-7 W5+5 W6-4 D5-4 X3-4
forward&low N8-5 W2-9 W5+10
forward&past SH3-5 SH5-6 SH6+7
forward&pull N1-4 N2-8 N3-4 N4-3 N5-4 N6-4 N7+6 N8+5 SH2-6 SH3-4 SH4-6 SH5+9 SH6-10 SH7-3 SH8-6 B1-7 B2-5 B3-3 B4-4 B5-3 B6-4 B7-4 B8-4 B9-3 B10-4 B11-8 B12-5 B13-4 B14-4 B15-6 A1-5 A2-4 A3-4 A4-3 A5-5 K1-7 K2-4 K3-5 K4-7 K5-3 K6-3 K7-4 W1-4 W3-7 W5-6 W7-6 W8-8 W9-6 W10-6 W11-3 W12-4 L1-6 L2-5 L3-8 L4-11 L5-5 D3-4 L6-4 L7-5 L8-7 L9-4 D1-6 D2-9 D4-4 D5-7 D6-6 D7-7 D8-5 X2-8 X3-4 X4-4
forward&sCurve W6-3
forward&sag W2-4 W3-3 W4-6 W5+9
forward&seam N2-4 N4-3 N5-3 N6-4 N7-4 N8-9 SH1-4 SH2-4 SH3-3 SH4-8 SH5+3 SH6+4 SH7-6 SH8-3 B2-4 B3-3 B4-3 B5-4 B9-4 B10-3 A1-4 K1-3 K2-4 K7-4 W1-5 W3-3 W5-4 W6+4 W7-5 W8-5 W9-3 L2-4 L4-5 D3-4 L6-5 L7-6 L9-4 D2-4 D5-4 X1-6
forward&seat W6+8 W7-5 W9-3 W11-4
forward&shoulderSeam N6-5 SH1-3 SH2-4 SH3-11 SH4-4 SH5-14 SH6+14 SH7-5 W6-8 L4-3 D5-3
forward&sideSeam N8-9 W6+19 W7-8 W8+5 L4-3
forward&slant W6+7
forward&sleeve N2-3 N7-5 N8-13 SH3-4 SH4-6 SH5+10 SH6-5 B11-4 W5-4 W6-9 W10-3 L1-6 L2-5 L3-7 L4+6 L5-5 L6-5 L7-4 L8-6 L9-3 D1-8 D2-8 D5-4 D6-7 D7-6 D8-3
forward&sleeveCap N8-3 D5+6
forward&sleeveSeam N8-6 SH3-7 SH4-3 SH5-3 SH6-7 B2-3 A5-3 W5-4 W6-6 W8-4 L1-4 L2-4 L3-4 L4+9 L6-6 L7-6 L9-4 D1-4 D5-6 D6-4 D7-4 D8-4
forward&slide N5-6 N7-9 N8+18 SH5-4 SH6+3 K3-3 D5+5
forward&strain N7+6 N8-7 B1+4 W6-4 W8-4
forward&swing N8+9 SH3-4 SH5-6 W6+10 W7-6 W8-10 L4+4 D5+4
forward&tight B3-4 W6-6 W8+6
forward&tilt N8-3 SH5-3 W6+11 W7-8 W8-7 W11-3 L4-3 X1-5
forward&tip SH5-6 SH6+9 W6-3
forward&twist W6+6 W8-4 X1-7
forward&uneven W5+3 W6+3
forward&waist N8-4 W2-9 W3-3 W4-6 W5+12
forward&whole N7-4 N8+9 W6-6 D5-6 X2-4
forward&wornOn N5-4 N7+6 SH5-3 SH6-4 K1-3 W3-3 W6-6 D5-4 X2-3
forwardShoulders N1-8 N2-6 N3-7 N4-9 N5-9 N6-8 N7-9 SH1-11 SH2-11 SH3-11 SH4-10 SH5+16 SH6-11 SH7-9 SH8-11 B1-6 B2-7 B3-7 B4-8 B5-8 B6-8 B7-9 B8-7 B9-8 B10-7 B11-8 B12-8 B13-7 B14-9 B15-8 A1-7 A2-8 A3-8 A4-7 A5-7 K1-7 K2-8 K3+8 K4-9 K5-9 K6-8 K7-8 W1-7 W2-8 W3-7 W4-8 W5-9 W6-9 W7-8 W8-8 W9-7 W10-8 W11-8 W12-8 L1-8 L2-8 L3-7 L4-8 L5-8 D3-8 L6-8 L7-8 L8-8 L9-8 D1-8 D2-8 D4-7 D5-7 D6-8 D7-8 D8-8 X1-8 X2-7 X3-8 X4-8
forwardShoulders&roundBack N4-4 N8-4 SH1-4 SH2-4 SH3-3 SH4-3 SH6-3 SH7-3 SH8-4 K3+9 K4-3
forwardShoulders&seam SH5+6 K3-6
from N2-4 SH5-3 SH6+3 B3-8 B13+4 B15+5 A5-3 K4+5 W4-5 L3-3 D2+4
from>apex SH2-3 B1+8 B3-6 B4-7 B5-5 B6-6 B13+6 B14-4 B15-7 K4-6 L1-5 X3-4
from>arm SH1-4 B8-4 B10-6 B13-3 A4-6 K4-3 K6-5 W1-5 W2-7 W3-4 W4-8 W5-3 L3-4 L4-4 L5-3 D1+3 D4+11 D5-4
from>armhole B1-7 B3-8 B8+9 B15-5 A1-6 L7-5
from>blade A1-5 K1-13 K4+17 W3-5
from>bust N2-5 B1-6 B2+7 B3-7 B6-4 B13+6 K4-3
from>dart B4+9 B5-10 B6-8 B7-4
from>front N5-5 SH3-4 SH4-4 SH6+9 B2-7 B8-5 B14-4 K4-4 W6-3 D6-7 X1-4
from>frontArmhole L4+3
from>hem D3+4 D2-3 D8-4
from>neck N1-5 N2-10 N5+6 N7+3 SH1+10 B1-6 B15+6 A2-4 D4-5
from>neckSide SH1+5 B1-6 B15+6 L1-3
from>shoulder SH2-3 SH3-5 SH4-10 B1-6 B2-5 B14+4 B15+6 D2+8 D7-4
from>shoulderSeam SH2-4 SH4-3 SH6-5 B1-7 B15+8
from>shoulderTip SH1-8 SH2+6 SH3-13 SH4+12 SH5-7 SH6-5 SH7-8 B9-6 B11-4 B15-4 K4-3 L1+4 L3-4 D2+5
from>side B2+4 B8+4 W3-5 D6-4
from>sideSeam B1+8 B3-4 B5-4 B6-4 B15-11 W6-5 W7-5 W8-6
from>sleeveCap SH1-4 A1-4 K4-4 W3-5 L1+4 L2-4 L5+4 D3-3 L7-4 D4-4
from>underBust B8-3 B13+5
from>underarm SH1+4 A5-6 K4+4 D4-5
from>upperChest SH2+5 B11-4
from>waist SH1-4 SH3-7 SH4-5 B2+4 B8-4 B14+5 K4-3 K6-4 W3-7 W4-6 W5-5 W12-3 D1-3 D2-4 D4+5 D5-4
front N2+3 SH5-3 SH7-3 B2+13 B13-6 B14+11 K2-4 K3-4 W1-4 W2-5 W5+4 W10+3 W11-6 D4-3 X3-3
front&frontArmhole L6+6
front&frontHem B2-5 W7-4 W10+4
front&frontNeck N1+6 B2-3 B14-4
front&frontWaist W2-5 W4-4 W5+6 W10+4
front&fullBust B1-8 B3-4 B12+5 B13-3
front&gape B8+5
front&hang N2-4 B2-3 B10-3 B13-4 B14+4 A5-6 D5+7 X3-5
front&hem B2+4 W7-4 W10+4 W11-8
front&high N1-5 N2+6 B2+6 B5-3 K3-3 W1-5 W11-6 L9+4
front&inward SH2+3 SH4-5
front&long N2-5 SH3-3 SH6-3 B4-5 B9+5 B11-3 B14+16 A5-6 K5-5 W1-3 W2-9 W5-7 L6+5 L7-7
front&loose N1+6 N3-5 B3-4 B10+5 B13-7 B14+8 A5-4 X3-4
front&low B1-3 B2-4 B3-4 B5+5 W2-6 W5+6
front&misses N1-3 N2-3 N5+6 N6-4 SH1-3 SH3-7 SH4-4 SH5-4 SH6-6 SH7-4 SH8-4 B1-6 B2-6 B3-4 B4-4 B5-6 B6-5 B8-4 B10-4 B11-3 B14-6 B15-5 A5-6 W5-4 W6+6 W7-4 W8-5 L1-3 L4-3 D1-3 D5-4 X4-4
front&nape N3-5 N8+7 B2-5 K7-3
front&narrow SH3-4 SH4+5 B2-4 B6-7 B10-3 B11+6 B14-3 A1-3 A5-4 K1-6 L3-5 D7-5 X2-6
front&neck N1+6 N7+3 B14-4
front&outward B2-6 W5-5 W6-3 W10+8
front&peak N7-3 SH6+3 A5-5
front&pull N1-3
front&reach B2-4 L5+4 D3+4
front&rise B2+17 B14-6 K3-4 W1-4 D3-4
front&sCurve N7-3 SH7+3
front&sag N2-4 N7+4 SH8-4 B2-4 B13-4 B14+5 A5-3 K5-6 W5+7
front&seat W6+4 W7-4
front&short N2-3 N8-3 SH4-7 B2+11 B8-3 B10-3 B11-3 B14-6 B15+3 A5-5 K3-10 W1-12 W5-4 W10+3 L1-6 L6-4 L7+3 L8-5 D2-4
front&shoulder N5+6 SH3-8 SH4-5 SH7-3 B1-4 B2-3 B3-3 B5-4 B14+6 W2-6
front&shoulderSeam SH3-4 SH6+8 SH7-3 A5-5
front&shoulderTip SH2+3 SH4-7 SH5-4 A5-3
front&show N5-5 SH4-3 SH6+9 B8-6 B14-3 W10-6
front&sideSeam SH6-5 B2-6 B5-3 B8-3 B10-4 B11-4 B14-5 A5-5 W5-4 W6+11 W7-10 W8-8 W9-3 W10-5 D5-3
front&slant B2-5 W5+3 X1+4
front&sleeve SH3-3 SH6-4 B2-6 B10-5 B14-7 W5-4 W10-3 L1-7 L2-8 L3+7 D3-3 L7-5 L8-4 L9-4 D1-7 D2-3 D4-7 D5+8 D6-7 D8-3
front&sleeveCap L1-4 L6+5
front&sleeveHem N1-3 B2-12 B8+5 A5-3 W10-3 L1-5 L9+14 D1-4 D6-5 D7-7 D8-7
front&sleeveless B8+4
front&slide N2-4 N3-4 N5-5 SH8-4 B2-5 B10-3 B14-3 W5-3 D5-3 X1+6
front&small N1-4 B2+7 B14-6 W1-4 L1-3 L6-5 L7+6 X2-4
front&stickOut N2-3 B2-4 W5-5 W10+8 W12-4 D1-4
front&strain B11+7 B15-5
front&swing N1-3 N8-5 SH6-3 B2-7 B10-3 B14-4 K4-3 W6+6 W7-7 W8-4 W10+5 D5-3 X1+4
front&tight B1+3 B3-5 B12+4 B13-4 L8+3
front&tilt W5+6
front&tummy W10+6
front&underBust B13-10 B14+16 A5-6
front&uneven B2+3 W2-4 W5+3 W11-6 L9-4 X1+4
front&up B2+5 W5-5 W9-3 X1-4
front&upperArm L3+8 L4-5 L6-7 D5-3 D6-3
front&upperChest B2-3 B9+5 B10+3 B11+4 B14-7 B15-5 A5-3
front&upright N1-5 SH6-4 B2-6 B8-5 B10+11 B14-5 A4-8 A5-6 K6-4 W4-5 W5-4 X3-5
front&waist B14+3 W2-7 W4-4 W5+7 W10+4
front&whole B14-4 A5-6 D5+8 X2-4 X3-7
front&wide N5-6 B2-5 B9-6 B10+7 B11-7 A4-5 X3-7
frontArmhole SH1-3 SH7-3 B6-5 B8+12 B10+6 B11+6 A1-10 A2-6 A3-5 A4-3 A5+15 L6+5 L7-4 D4-4 D6-4
frontArmhole&gape N1-4 B8+10 A3-6 A5-4
frontArmhole&long L6+8 L7-8
frontArmhole&loose B8+11 A2-5 A3-4 A5-9 X3-6
frontArmhole&narrow B11+6 A5-5
frontArmhole&neck N2-3 N5-3 SH7-4 B8-3 A5+7
frontArmhole&peak N2-3 N5-3 SH7-4 B8-3 A5+7
frontArmhole&short L6-7 L7+5
frontArmhole&sleeve B8-4 A2-4 A5-3 L6+8 L7-5 D6-5 X3-3
frontArmhole&sleeveCap B8-3 L1-4 L6+5
frontArmhole&sleeveless B8+7 A3-3 A5-3
frontArmhole&small L6-4 L7+7
frontArmhole&strain B8-4 B11+10 B12-3 A1-6 A5-8
frontArmhole&upright B8-8 B10+12 A4-6 A5-8
frontHem N1-3 N2-5 N6-3 N7+7 N8-7 SH4-4 SH6-4 SH7-3 SH8-3 B2+7 B5-5 B8-4 B10-4 B11-4 B12-4 B14-4 A1-4 A2-3 A5-4 K3-15 K4-3 W1-6 W5-4 W7-4 W9-10 W10+12 W11-9 W12-5 L1-4 L5-4 D3-9 L8-3 L9-5 D1-4 D5-3 D6-3 D7-3 D8-5
frontHem&hem B2-5 W7-4 W10+4
frontHem&rise N7-8 N8-4 SH4-3 B2+6 A5-3 K3-12 W1-5 W6-4 W9-9 W10+8 W11-5 L1-3 L5-4 D3-8 L9-4 D8-3
frontHem&seat W6+4 W7-4
frontHem&sideSeam W6+6 W7-4
frontHem&stickOut B2-3 W6-3 W10+9 W12-3 D1-5
frontHem&swing W10+4
frontHem&throat N2-4 N7+5
frontHem&tummy W10+5
frontHem&up N2-4 N7+9 N8-4 B2-6 K3-5 W10-5 W11-4
frontNeck N1+17 N2+8 N3-6 N4-4 N5-6 N6-5 SH1-3 B2-4 B3-3 B8-4 B14-5 A5-4 X3-6
frontNeck&gape N1+11 N2-4 N3-3 N6-5 B8-4
frontNeck&high N1-6 N2+5 B2-4
frontNeck&loose N1+9 N2-9 N3-4 N5-5 N8+6 SH1-3 B3-4 B8-3 B13-3 X3-6
frontNeck&low N1-6 N2-3 N8+7 W2-4 X3-4
frontNeck&nape N8+5
frontNeck&neck N1+6 B2-3 B14-4
frontNeck&pinch N2+5
frontNeck&pull N1-5 N2+7
frontNeck&rise N8+4
frontNeck&strain N1-4 N2+7
frontNeck&tight N1-7 N2+10 X2-3
frontWaist B2+11 K3-7 K5-3 K6-4 W1-8 W2-6 W3-5 W4-8 W5+16 W12-4
frontWaist&high B2+5 W1-8 W2-3 W5-4
frontWaist&long B14+4 W2-4 W5-3
frontWaist&loose W4-5 W5+5
frontWaist&low B2-4 W2-9 W5+9
frontWaist&rise N8-3 B2+12 K3-7 W1-12 W5-8 W10-4 D3-4
frontWaist&sag B2-4 B14-4 W2-5 W4-5 W5+13
frontWaist&slant B2-3
frontWaist&stickOut B2-4 W5-5 W10+7 W12-4
frontWaist&swing B2-4
frontWaist&tilt B2+4
frontWaist&tummy W5+4 W10-3
frontWaist&up B2+6 W5-4
frontWaist&waist W4-4 W5+7 W10+4
fullBust B3+7 B6+3
fullBust&grip B1+4 B3-4
fullBust&hang B1-4 B13+5
fullBust&long B2+3
fullBust&loose B1-7 B6-4
fullBust&misses B1+3
fullBust&neck N2-5 B1-5 B15+8
fullBust&neckSide B1-5 B15+5
fullBust&oneShoulderLow SH8-5 B1-6 B3-5 B15+6
fullBust&open B1-5 B12+4
fullBust&outward B2+6 B3-6 B5-4 B15-5 K4-3 W3-3
fullBust&past B4+5 B6-8
fullBust&placket B1-5 B12+4
fullBust&pull B2+4 B3-4 B6-4 B15+3
fullBust&rise B1-4
fullBust&sag B13+3
fullBust&short SH4-3 B15+5
fullBust&shoulder SH4-4 B1-4 B15+5
fullBust&shoulderSeam B1-6 B15+8
fullBust&side B1-3 B2+6 B15-4 W3-4
fullBust&sideSeam W6-5 W8+6
fullBust&slant B2+8 B15-6 K4-3
fullBust&small B1+7 B3-6 B6-3 X2-5
fullBust&stickOut B4+6 B5-4 B6-6
fullBust&strain B1+5 W8-5
fullBust&swing B1-3 B4-4
fullBust&tight B6+5
fullBust&tilt B2+4
fullBust&underBust B2-3 B3-4 B6-4
fullBust&up B2+4
fullBust&upperChest B1-5 B3-4 B5+7 B6-3 B9-4 B11-4 B15-4
fullBust&waist B1-3 B2+3 W3-5
fullBust&wide B3+4
gape N1+11 N2-3 N6+4 SH1+3 SH2-4 B8+12 B12+4 B13+5 A2-3 A3+6 W3-5 W4+5
gape&hump N1-7 N3-4 N6-4 K7+6
gape&loose N1+7 B8-4 X3-4
gape&nape N1-10 N3+13 K7-5
gape&neck N1+10 N2-6 N5-4 N6+7 B8-4 B12-3 K7+3
gape&neckSide N6+8
gape&placket N1-7 N3-4 N6-4 SH1-3 B12+15 B13-5 A2-4 A3-6 W4-3 D1-4
gape&seam N1-4 N6+6 SH4-5
gape&shoulder N6+6 SH3-4 SH4-5 D1+3
gape&shoulderSeam N1-5 N6+9
gape&shoulderTip N1-5 N6-6 SH1+13 SH2-8 SH3-9 SH4-5 SH5-5 SH7-5 B8-6 B12-4 B13-3 A3-4 W4-3 D1-8
gape&skin N3+3 B8+5
gape&sleeve SH3-3 B8-5 L3-6 L4-5 D1+9 D6-3
gape&sleeveHem N1-8 N3-5 N6-5 SH1-4 B6-3 B8+8 B10-4 B12-6 B13-5 B14-4 A3-6 A5-3 K6-4 W4-5 W8-4 W10-3 W12-3 L1-4 L2-8 L4-4 L6-5 L9-10 D1+3 D2-3 D5-3 D7-10
gape&sleeveless N1-5 N3-3 SH5-6 B12-5 B13-3 A3+6 A4-4 D5-3
gape&stickUp N3+3
gape&tip N1-4 N3+4
gape&underBust N1-7 N3-4 N6-5 SH1-4 B1-3 B5-8 B8-8 B12-7 B13+12 B14-7 A2-3 A3-5 W1-4 D1-4
gape&upperBack N3-3 N6+4
gape&vNeck N1+6 N2-6 N3-4 N6-5 B8-4 B12-3
gape&waist N1-5 N6-3 B8-5 B12-4 A3-4 K2-4 K3-4 W1-6 W2-7 W3-8 W4+11 W5-3 D1-3
gape&wide B8-5 D1-3 D6+4
grip SH1-3 SH2+4 SH4-5 B1+3 B3-3 A1+7 A2-3 K4-4 W4-3 L1-5 L3+6 L4-4 L7-4 L8+6 L9-4 D1-3 D2-5 D4-3 D7+5 D8-5 X2-3
grip&neck N1+5 N5-4 SH2-3 A1-3 K1-3 L3-3 L8-3 D7-3
grip&reach K1+4
grip&shoulderTip SH1-7 SH2+8 SH3-3 SH4-7
grip&show D6+3
grip&sleeve L1-4 L3+5 L4-5 D3-3 L8+5 D1-3 D6-3 D7-5
grip&sleeveHem A1-3 L3-9 L8-5 L9-6 D2-4 D6-6 D7+8 D8-8
grip&tight B1+4 B3-4 L3-3
grip&tummy W10+5
grip&underarm A1+8 A2-5 D4-5
grip&upperArm L3+8 L8-3 D7-5
grip&waist W1-4 W2-4 W3+8 W4-7
hang N2-7 N5-3 N7-7 N8-8 SH1-3 B3-5 B8-4 B10-3 A1-4 A3-5 A5-5 W4-4 W5-3 W7-4 W11-4 L2-3 D4+3 D5+12 D8-4 X2-3
hang&hem W6+4 W10-3 X1-4
hang&long SH3+3
hang&loose W4+3
hang&misses K6+3 W4-5 D2-4
hang&neck SH1+6
hang&new X3-3 X4+5
hang&seat W6+3
hang&shoulder SH1-3 SH3+6 SH4-4 X3-6
hang&sideSeam W6+5
hang&sleeve L2-4 L3-3 L4+8 D1-5 D5-6 D6-5
hang&sleeveCap D5+4
hang&slide N5-4 N7-7 N8-7 SH2+3 SH5-3 A4-3 W6-3 D5+7 X3-3
hang&swing D2-4
hang&tight B1-4 B13+5
hang&underBust N2-4 B13-4 B14+6
hang&underarm A1-5 A2-9 D4+9
hang&uneven N2-4 SH8-5 B11-3 B13-3 A4-4 K6-4 W8-4 L4-5 D4-3 D5+5 D8-4 X1+3 X3-5
hang&upright A3-4 A4+4 K6-3 D4-3 D5-3
hang&waist A4-3 W1-5 W2-4 W3-4 W5-4 D4+4 D5-5
hang&whole N2-3 N7-5 SH3-3 B13-3 A4-7 K5-4 K6-4 L4-3 D4-3 D5+8 X1-5 X2-7 X3+5
hang&wide B10+4
hang&wing N2-4 SH1-7 SH3-3 SH8-4 B8-3 B13-4 A1-3 A2+4 A4-3 K6-4 L4-4 D1+5 D4-6 D5-4 X3-5 X4-4
hem B2-4 K2-4 W9+6 W11+18 L9-3
hem&high B2+4 B5-7 A1-5 K3-8 W1-6 W9-6 W10-5 D3-5 L9-6 D8-4
hem&hump K7+3
hem&hung W11+4 D8+3
hem&long K3-6 K5-3 W2-5 W6-4 W7-5 W11+10
hem&pull D3+5
hem&rise B2-12 K3-6 W1-5 W9+11 W10-6 W11-12 D3+6 D8-4
hem&sag K3-4 W11+10 D8+4
hem&seat A2+3 W6+4
hem&side SH8-8 K3-3 W9-5 W11+7 D3+5
hem&sideSeam W6+9 W7+4 W11+3
hem&slant W6-4 W9-3 W11+6 L1-3 L9-3
hem&sleeve W11-4 L9+3
hem&sleeveHem W11-4 L9+3
hem&small W9+3
hem&stickOut W9-3
hem&strain W9+4
hem&swing W7+3 W10+3
hem&tight K3+4 W9+5
hem&tilt W7+3 W9-3 W11+4
hem&twist X1-5
hem&underBust B13-3 A2+6 W9-5 W11-3
hem&underarm A2+4
hem&uneven B2+4 W9-3 W11+11 X1-6
hem&upperBack N7-4 A4-8 K1-8 K3+11 K5-7 W7-3 W9-3 W11-10 D8-4
hem&waistDart W12+5
hem&wavy D8+7
high N1-6 N4-4 N7-4 N8-4 SH2-3 SH4-5 SH5-3 SH7-4 B4-4 B5+9 B6-5 B7-3 B8-4 A1+6 A2-6 A3-3 A5-4 K6-4 W1+7 W2-7 W3-6 W4-6 W5-4 W9-5 W10-7 W12-3 L1-3 L5-3 D3-6 L6-5 L7-6 L8-3 L9+5 D4-5 D5-3 D6-4 D7-4 D8-4 X1-3 X4-3
high&inward L9+5
high&misses N2-3 N4-4 SH5-3 SH8-6 B2-6 B5+6 A1-4 A5-4 K3-5 W1-7 W9-3 L1+9 L2-11 L4-3 D3-4 L6-5 L7-3 L9-6 D5-4 X4-4
high&neck N1-5 N2+7 B2-4
high&oneSide SH8+6 B2-3 B5-4 K3-3 W1-4 W11-6
high&side SH8-4 L9+4
high&sleeveCap B2-4 B5-9 K3-5 W1-6 L2+5 D3-3 L6-7 L7-5 L9-7 D1-3 D6-3
high&sleeveHem SH8-3 B5-4 W1-5 L9+11 D6-3 D7-5 D8-4
high&underarm B2-3 B5-6 A1+8 A2-8 K3-4 W1-4 L9-5 D4-5
high&waist B5-7 K6-3 W1+10 W2-7 W3-8 W4-8 W5-4 L9-4
hip W1-3 W2+4 W3-5 W4-5 W9+15 X2-5
hip&pull W9+5
hip&rise W9+4
hip&small W9+8 X2-6
hip&stickOut W9-3 W12+4
hip&strain W9+8 L3-3
hip&tight W9+10
hip&tip W6+4 W9-3
hip&up W6+3
hip&waist W1-6 W2+7 W3-6 W4-5 W5-4 W12-4
hip&waistDart W12+6
hollowBack N1-5 N2-5 N3-6 N4-6 N5-5 N6-5 N7-6 N8-6 SH1-5 SH2-6 SH3-6 SH4-5 SH5-6 SH6-5 SH7-6 SH8-6 B1-6 B2-6 B3-5 B4-6 B5-5 B6-5 B7-6 B8-5 B9-6 B10-5 B11-6 B12-5 B13-5 B14-6 B15-6 A1-5 A2-5 A3-5 A4-5 A5-5 K1-6 K2+19 K3-9 K4-6 K5-9 K6-11 K7-6 W1-5 W2-5 W3-5 W4-4 W5-6 W6-5 W7-6 W8-6 W9-5 W10-5 W11-7 W12-5 L1-5 L2-5 L3-5 L4-5 L5-5 D3-5 L6-6 L7-6 L8-5 L9-6 D1-5 D2-5 D4-5 D5-6 D6-5 D7-5 D8-5 X1-5 X2-5 X3-5 X4-5
hollowBack&lowerBack K2+6
hollowChest N1-7 N2-8 N3-7 N4-7 N5-7 N6-7 N7-6 N8-6 SH1-6 SH2-8 SH3-6 SH4-7 SH5-8 SH6-8 SH7-7 SH8-6 B1-10 B2-7 B3+6 B4-6 B5-9 B6-7 B7-7 B8-6 B9+10 B10-11 B11-12 B12-7 B13-7 B14-6 B15-8 A1-6 A2-7 A3-7 A4-6 A5-7 K1-6 K2-8 K3-7 K4-7 K5-6 K6-7 K7-7 W1-8 W2-7 W3-6 W4-6 W5-6 W6-6 W7-7 W8-7 W9-7 W10-7 W11-7 W12-7 L1-7 L2-6 L3-6 L4-7 L5-7 D3-7 L6-7 L7-7 L8-7 L9-7 D1-8 D2-6 D4-7 D5-7 D6-7 D7-7 D8-7 X1-7 X2-6 X3-6 X4-7
hump N1-9 N2-8 N3-12 N4-9 N5-7 N6-5 N7-5 N8-9 SH1-4 SH2-4 SH3-4 SH4-4 SH5-4 SH6-4 SH7-5 SH8-4 B1-5 B2-4 B3-4 B4-4 B5-4 B6-4 B7-4 B8-4 B9-4 B10-4 B11-4 B12-4 B13-4 B14-4 B15-5 A1-5 A2-4 A3-4 A4-5 A5-4 K1-5 K2-4 K3-5 K4-4 K5-5 K6-4 K7+22 W1-4 W2-4 W3-5 W4-4 W5-4 W6-4 W7-4 W8-4 W9-5 W10-4 W11-4 W12-4 L1-4 L2-4 L3-5 L4-4 L5-4 D3-4 L6-4 L7-5 L8-5 L9-4 D1-4 D2-5 D4-4 D5-4 D6-4 D7-4 D8-4 X1-4 X2-5 X3-4 X4-4
hump&nape N3-8 N4-5 N8-5 K7+9
hump&neck N1-8 N2-5 N3-5 N4-3 N5-5 N6-4 K7+9
hump&rise N8-3 K7+4
hump&seat K7+3
hung W11+3 L9-8 D5-5 D8+9
hung&sag W11+6 D8-7
hung&seat W11+4
hung&sleeveHem L9-8 D8+8
hung&uneven L9-8 D5-4 D8+10
inward SH1-4 SH3-8 SH4+5 SH5-5 SH7-6 B4-7 B5-9 B6+13 B7-7 L1-3 L9+10 D6-3
inward&long SH3-3 B6-3 L9+4
inward&misses B5-5 B6+5
inward&outward SH3-3 B6-3 L9+4
inward&pull SH2+7 SH4-5
inward&rise L9+8
inward&seam SH4+6
inward&short L9+5
inward&shoulderTip SH1-4 SH2+4 SH3-8 SH4+8 SH5-4 SH7-5 L9-3 D2-4
inward&sleeve SH3-3 B6-3 L9+4
inward&sleeveHem L9+10 D7-4
inward&strain SH2+3
inward&swing B4-5 B6+7
long N2-4 N7-3 N8-3 SH3+3 SH4-3 SH6-4 SH7-3 SH8-3 B1-3 B4+10 B5-8 B6-4 B9+5 B10-4 B11-3 B14+10 A2-3 A4-4 A5-4 K1-4 K4-4 K5+8 K6-4 W2+11 W5-7 W6-3 L1-4 L4-4 L9+3 X1-3
long&oneSide SH8-4 L4-5 L9+6
long&outward SH3-3 B6-3 L9+4
long&sCurve K3+4 W8-3
long&short B2+5
long&shoulder N5-4 SH2-4 SH3+8 SH7-5 SH8-3 B4-4 K5-4 W1-4
long&shoulderSeam SH3+9 SH5-5 SH6-7 SH7-3 B14-4 W2-7
long&side SH3-3 SH8-4 W2-3 W11+4 L4-5 L9+5
long&sideSeam W2-4 W6-5 W7-4 W11+6
long&sleeve B4-3 B14-4 K5-8 W2-5 L1-4 L3-3 L4-8 L6-4 L9+9 D1-4 D5-4 D6-4 D8-3
long&sleeveCap SH3-9 SH7-4 B4-4 B8-3 B14-5 A2-7 W2-5 L1-8 L2-7 L6+4 L9-5 D8-3
long&sleeveHem L9-6 D8+8
long&small N2-5 N3-3 N7-5 N8-4 SH2-4 SH3-6 SH4+4 SH7-4 SH8-4 B1-4 B2+6 B4-6 B9-5 B11-4 B13-3 B14-8 A1-5 A3-3 K1-8 K2-3 K3+7 K4-3 K5-7 W1+10 W2-12 W3-5 W5-3 W8-4 W9-4 W10-4 W11-4 L1-6 L3-3 L7-4 L8-3 L9-4 D7-4 D8-3 X1-4 X2-10 X4-4
long&tight B2+3
long&twist L9-6 D8+8
long&underBust B14+6
long&up B2+4
long&upperBack N7-3 B4-4 B14-4 A4-7 K1-5 K3-10 K5+10 K6-4 W2-6
long&upperChest B2-3 B4-3 B9+12 B10-4 B11-7 B14-8 B15-3 K5-4 W2-5
long&waist SH3-6 B14+4 K6-3 W1-9 W12+8
long&waistDart B4-4 W2-6 W12+6
longWaisted N1-7 N2-8 N3-7 N4-8 N5-7 N6-7 N7-7 N8-7 SH1-7 SH2-7 SH3-8 SH4-7 SH5-7 SH6-7 SH7-7 SH8-7 B1-7 B2-8 B3-8 B4-10 B5-7 B6-7 B7-8 B8-7 B9-8 B10-8 B11-7 B12-7 B13-7 B14-9 B15-7 A1-7 A2-8 A3-7 A4-8 A5-7 K1-7 K2-8 K3-8 K4-7 K5-8 K6-8 K7-7 W1+11 W2+6 W3-9 W4-10 W5-8 W6-7 W7-7 W8-7 W9-7 W10-8 W11-9 L1-7 L2-7 L3-7 L4-7 L5-8 D3-7 L6-8 L7-8 L8-8 L9-9 D1-7 D2-7 D4-8 D5-7 D6-7 D7-7 D8-8 X1-7 X2-7 X3-7 X4-8
longWaisted&waist B4-3 W2-7 W12+6
looksPregnant N1-5 N2-5 N3-6 N4-5 N5-5 N6-6 N7-5 N8-5 SH1-6 SH2-5 SH3-6 SH4-5 SH5-6 SH6-5 SH7-6 SH8-5 B1-5 B2-5 B3-6 B4-6 B5-6 B6-6 B7-5 B8-5 B9-5 B10-5 B11-5 B12-5 B13-6 B14-5 B15-5 A1-5 A2-6 A3-6 A4-6 A5-5 K1-5 K2-5 K3-5 K4-5 K5-5 K6-6 K7-6 W1-5 W2-5 W3-5 W4-5 W5-6 W6-5 W7-5 W8-6 W9-5 W10+12 W11-5 W12-6 L1-5 L2-5 L3-5 L4-6 L5-6 D3-6 L6-6 L7-5 L8-5 L9-6 D1-5 D2-5 D4-6 D5-6 D6-5 D7-5 D8-6 X1-6 X2-5 X3-6 X4-5
loose N1+4 SH3-4 B3+4 B8+8 B13+7 A5-3 W2-3 W4+6 D4-4 X3+15
loose&low N1-6 N2-3 N8+7 A2-3 W2-4 X3-4
loose&lowerBack B3-4 B8-3 B13-3 A4-4 K2+6 X3-6
loose&nape N1-6 N3+10 B2-3 K5-4 K7-3
loose&neck N1+7 N2-4 N3+4 N5-5 K5-4 X3-3
loose&oneSide SH8+9 B13-4 B14-3 X3-6
loose&realCloth X3-3 X4+7
loose&rise N3-3 N7+6 N8+4 B3-3 D3+4 X3-4
loose&sag SH1+4 SH8+5 B13+4 B14+4 A4-6
loose&shoulder N6+5 L2+4 L3-5
loose&shoulderSeam SH1-5 SH2+5 SH3-4 SH6-5 B13-4 W5-4
loose&shoulderTip SH1+14 SH2-13 SH3-10 SH4-7 SH5-5 SH6-3 SH7-5 B3-4 B8-3 B13-4 W4-4 D2-4 X3-9
loose&side SH8+4 A2+3
loose&sleeve L2-5 L3+5 L6-4 D1-3 D6-3 X3-4
loose&sleeveCap L1-6 L2+12 L6-8 X3-5
loose&sleeveless B8+4
loose&slide N7+3 N8+4 A4-4 D5-4 X3-4
loose&small X2+5 X3-6
loose&smallBust B3+6
loose&stickUp N6+3
loose&swing N8+4 D5-3
loose&tight B1-7 B6-4 X3-4
loose&tilt SH1-5 SH2+5 SH3-4 SH6-4 B13-3 W2-4 W4-6 W5+7 X1-6 X3-3
loose&toile X3-6 X4+10
loose&twist X1+6 X3-7
loose&underBust B3-8 B5-4 B8-4 B13+20 B14+4 A2-3 W4-4 X3-9
loose&underarm B8-4 B13-4 A1-9 A2+14 A3-3 D4-12 X3-6
loose&upperArm SH3-3 L3+4 L4-3 L6-5 D1-4 D6-3 X3-4
loose&upperBack B8-4 B13-3 A3-4 A4+13 K1-8 K3-7 K6-3 W2-3 X3-6
loose&upperChest B3-4 B9+11 B10-4 B11-5 X3-4
loose&upright B8-6 B10+10 A4+8 A5-3 K2-5 K5-6 K6+3 X3-10
loose&vNeck N1+8 N2-6 N5-3 X3-4
loose&waist K5-6 K6-8 W1-4 W2-4 W3-7 W4+15 W5+4 X3-6
loose&whole N7-3 SH1-3 B3-5 B8-5 B13-5 W4-5 W5-4 X3+14
loose&wornOn N7+4
low N1-8 N8+5 SH4-3 B2-4 B3-3 B4-8 B5+9 B6-4 B8-5 B14-3 A2+8 W1-3 W2+12 W3-5 W4-6 L1+6 L2-5 L3-5 L6-4 L7-3
low&nape N8+3
low&oneSide SH3-4 SH8+9 B5-4 W2-6
low&shoulder SH4-4
low&shoulderTip SH2+4 SH4-4
low&sit SH3-3 SH8+5 W2-3
low&sleeve SH3+7 A2-4 L1-6 L3-5 L4-4 L5+3 D3-3 D1-3
low&sleeveCap N8-5 SH3-8 SH8-4 B5-6 A2-5 W2-8 W5-5 L1+12 L2-10 L5-4 L6-8 L7-6 L9-3 D1-3 D8-5
low&stickOut W12+4
low&stickUp B4-4 B5+4 A2+4 W12-3
low&strain SH2+10 SH3-3
low&tip SH4-3 W12+3
low&waist N8-3 B5-3 A2-5 W1-5 W2+11 W3-8 W4-8 W12-4
lowerBack N4-4 SH8-4 B2-3 B3-4 B8-3 B9-4 B10-5 B13-4 B14-4 A4-6 A5-5 K1-3 K2+15 K3-8 K5-6 K6+5 W2-6 W4-3 W5-3 W9-4 W11+5 L2-4 L4-3 L6-3 L9+5 D4-4 D5-4 D6-5 D7-7 D8-7 X1-3 X3-5 X4-3
lowerBack&pucker K2+6 K6-4 L6-3
lowerBack&upright SH8-4 B10-8 A4-6 K2-12 K6+13 X3-4
meal SH4-3 W1-4 W3+3 W4-3 L1-6 L2-3 L3-10 L4-6 L7-4 L8+13 L9-5 D1-4 D2-6 D6-5 D7-5 X2-3
meal&pull L1-3 L3-4 L8+8 D2-4
meal&short W1-3 L1-4 L8+6 L9-5
meal&sleeve SH4-3 L1-6 L2-3 L3-9 L4-5 L7-4 L8+13 L9-5 D1-4 D2-6 D6-4 D7-4
meal&tight W3+4 L3-7 L8+7
misses N7-3 N8-3 SH2-3 SH3-5 SH4-4 SH6-4 B2-4 B3-6 B5+10 B6+6 B7-5 B8-4 B13-3 B14-3 B15-5 A1-4 A2-4 A4-3 A5-4 K3-4 W2-3 W3-6 W8-3 W12-3 L2-5 L3-3 L6-4 L7-4 L9-4 D1-4 D2-3 D4-4 D5-3 X4+8
misses&neckSide N6+4
misses&oneSide N5-3 SH3-3 SH8+4
misses&outward B5-5 B6+6
misses&peak B4-3
misses&pointy B1+4 B4+3 B5+5 B7-5 B15-3
misses&realCloth X4+4
misses&sag N5-4 SH3+3 SH8+4 B5-3 W11-3
misses&shoulder N5+5 SH4-4 SH8-5 B1-4 B3-4 B5-4 B6-3 B15-4
misses&shoulderSeam N6+6 SH3-7 SH5+4 SH6-3
misses&shoulderTip SH7+4
misses&sleeve N6-3 SH3-4 B5-4 B6-3 L1-7 L2-5 L3-7 L4+6 L5-4 L6-5 L7-4 L8-4 L9-5 D1-7 D2-6 D4-3 D5-4 D6+6 D8-4 X4-3
misses&sleeveCap B5-8 W1-3 L1+9 L7-6 L9-4 D5-3
misses&smooth B5-4 B7+5
misses&strain B1+8 B5-3 B6-4
misses&swing SH7+3 B4-3 B5-4 B6+3 D2-4
misses&tight B1+3
misses&tip B4+7 B6-3
misses&toile SH1-3 B5-4 B6-4 K6-3 W4-4 L1-3 L4-3 X3-4 X4+13
misses&underBust B13-4 K6-3 W1+5 W2-4 W3-4 W4-5
misses&underarm B4-4 B5-7 B6+7
misses&upperChest B4-5 B5+5 B6-4 B7-4
misses&waist B1-4 B5-6 B6-4 B13-4 K2-4 K3-5 K6+4 W1+5 W2-5 W3-7 W5-4
nape N1-5 N2-5 N3+18 N4+7 N5-3 N8+7 K7+4
nape&neck N1-3 N2-4 N3+4
nape&reach N2-4 N3-7 N4-5 N5-4 K7+6 W5-3
nape&rise N3-13 N4-7 N8+13 B2-7 K3-7
nape&sag N3-4 N4-3 K5+4 K7-5 W5-5
nape&sit N4+3
nape&skin N1-3 N3+4
nape&small N2-13 N3+5 N8-5 K7-8 X2-6
nape&stickUp N6-3
nape&strain N2-4 N3-4 N4-8 K7+8
nape&up N3-5 N4+4 N8+8 K7-6
nape&wavy N3-6 N4+7 K7-4
nape&wide N3+12 N4-4 N5-9 N8-4 A4-3 K7-3
narrow N2-4 N5-3 N6-3 N7-5 SH2-5 SH3-9 SH4+9 SH5-4 SH6-4 SH7-3 SH8-3 B2-4 B3-8 B4-6 B5-7 B6+12 B7-3 B8-4 B9-4 B10-8 B11+11 B12-4 B14-3 B15-6 A1-4 A4-5 A5-7 K1+4 K3-5 K4-4 K5-3 W3-4 W7-3 W9-3 W10-4 L1-4 L4-3 L7-3 L8-4 L9-5 D1-4 D2-5 D5-3 D6-4 D7+4 D8-5 X1-3 X2+4 X3-5 X4-3
narrow&shoulder N5-4 SH2-6 SH3-9 SH4+9 SH7-3 B6-4 B11-6 K1-5 D2-3 D7-3 X2-5
narrow&sleeve L3+6 D7-3
narrow&sleeveHem SH4-4 B6-4 B11-6 K1-4 L1-3 L3-6 L9-6 D2-4 D6-4 D7+7 D8-7 X2-4
narrow&upperArm L3+6
narrow&upperChest B9-5 B11+9
narrow&whole SH4-6 B6-6 B11-7 K1-5 L3-3 D7-5 X1-3 X2+8 X3-8
narrowBack N1-8 N2-6 N3-7 N4-8 N5-7 N6-6 N7-7 N8-7 SH1-7 SH2-6 SH3-9 SH4-8 SH5-7 SH6-6 SH7-7 SH8-6 B1-6 B2-6 B3-8 B4-6 B5-6 B6-8 B7-7 B8-7 B9-8 B10-8 B11-9 B12-7 B13-8 B14-7 B15-6 A1-6 A2-6 A3-7 A4+9 A5-7 K1+8 K2-8 K3-9 K4-7 K5-8 K6-9 K7-6 W1-6 W2-6 W3-6 W4-8 W5-7 W6-6 W7-7 W8-7 W9-7 W10-7 W11-7 W12-7 L1-6 L2-8 L3-7 L4-7 L5-7 D3-6 L6-6 L7-6 L8-7 L9-7 D1-6 D2-6 D4-9 D5-8 D6-7 D7-8 D8-6 X1-7 X2-8 X3-9 X4-8
narrowChest SH6-3 B1-5 B3-4 B9-6 B10+6 B11+7 A4-6 A5-4 K6-4
narrowChest&upright B9-4 B10+9 B11-4 A4-5
narrowShoulders N1-6 N2-6 N3-7 N4-7 N5-8 N6-7 N7-7 N8-7 SH1-9 SH2-10 SH3+13 SH4-11 SH5-9 SH6-8 SH7-8 SH8-10 B1-7 B2-7 B3-7 B4-7 B5-7 B6-8 B7-7 B8-6 B9-6 B10-7 B11-9 B12-7 B13-7 B14-6 B15-7 A1-7 A2-6 A3-7 A4-8 A5-6 K1-9 K2-7 K3-7 K4-8 K5-7 K6-6 K7-7 W1-7 W2-7 W3-7 W4-7 W5-7 W6-7 W7-7 W8-7 W9-7 W10-7 W11-7 W12-7 L1-7 L2-7 L3-7 L4-7 L5-7 D3-7 L6-7 L7-7 L8-7 L9-7 D1-7 D2-7 D4-6 D5-7 D6-7 D7-8 D8-7 X1-7 X2-9 X3-6 X4-7
neck N1+8 N2+14 N3-4 N5+12 SH1+3
neck&neckSide N6-3
neck&outward N1-6 N2-7 N5+7 SH1-5 SH8+3 B15-4
neck&past N2-4 N5+4
neck&peak N2-3 N5-3 N6-3 A5+6
neck&pointy B15+3
neck&pull N1-4 N2+3 N5-5 N7+4 B1-5
neck&reach N1-6 N2-6 N3-7 N4-4 N6-4 N8-5 B10+6 K1-5 K7+5 X3-6
neck&rise N3-6 N4-4 N8+7 K3-5 K7-6
neck&sag N6-3 K5+3 W5-3
neck&seam N1-4
neck&shoulder N6-3 SH3-3
neck&shoulderSeam N1-7 N2-4 N6+8 SH1-4 SH3-5 SH5-4 SH6-4
neck&shoulderTip N2-9 SH2+7
neck&show N5+5
neck&sit N2-3 N5+7
neck&slant SH1+8 B15-3 D4-3
neck&slide N5+4
neck&small N1-5 N2+9 N5-4 X2-7
neck&stickOut N2-5 N5+4
neck&stickUp N6+5 SH1-4
neck&strain N1-4 N2+11 N5-6 B1-5 B15+5
neck&strap N1-4 N2-3 N5+6
neck&swing N7+3 SH1+7 SH5-3
neck&throat N2+6
neck&tight N1-4 N2+10 N5-3 SH2+4 B1-3 B15+4
neck&tilt N5-4 SH8+4
neck&underarm SH1+9 A5-3 D4-6
neck&upperBack N1-5 N2-5 N4+4 N6+4 A4-3 K5-4
neck&upright N1-3 N5-4 N6-3 B10+6 A4-3
neck&wide N1-8 N2-8 N5+16 SH3-3 B10-7 A4-5 D6-4 X3-4
neckSide N1-3 N2-3 N5+5 N6+13 SH3-4 SH4+9 B15+3
neckSide&outward N1-3 N2-4 N5+9 N6-5 SH4-3 B4-3 B6-6
neckSide&past N1-4 N2-4 N5+8 N6-5 SH4-3 B4-3 B6-6
neckSide&pointy B15+4
neckSide&pull B1-3 B15+5
neckSide&rise N6+5
neckSide&seam N2-3 SH3-3 SH4+9 A1-3 A2-3 L7-5
neckSide&shoulder N6+4 D1-3
neckSide&shoulderSeam N6+12 SH3-3 SH4-4 SH6-3
neckSide&slant SH1+5 L1-3
neckSide&stickUp N5-3 N6+11 D1-4
neckSide&strain B1-6 B15+11
neckSide&tight B1-4 B15+3
neckSide&tilt SH1+6 L1-3
neckSide&up N6+6
new N1-6 N2-6 N3-5 N4-6 N5-5 N6-5 N7-5 N8-5 SH1-6 SH2-5 SH3-6 SH4-5 SH5-5 SH6-5 SH7-5 SH8-5 B1-5 B2-5 B3-6 B4-5 B5-5 B6-5 B7-5 B8-5 B9-6 B10-5 B11-5 B12-5 B13-6 B14-6 B15-5 A1-5 A2-5 A3-5 A4-6 A5-5 K1-5 K2-5 K3-5 K4-6 K5-6 K6-6 K7-5 W1-5 W2-5 W3-5 W4-6 W5-5 W6-6 W7-5 W8-5 W9-5 W10-5 W11-5 W12-5 L1-5 L2-6 L3-5 L4-6 L5-6 D3-7 L6-5 L7-5 L8-5 L9-5 D1-6 D2-6 D4-6 D5-6 D6-6 D7-5 D8-5 X1-6 X2-5 X3-6 X4+18
new&realCloth X4+12
new&toile X4+5
oneShoulderLow N1-8 N2-9 N3-9 N4-9 N5-9 N6-9 N7-9 N8-9 SH1-13 SH2-13 SH3-13 SH4-12 SH5-12 SH6-11 SH7-10 SH8+25 B1-9 B2-9 B3-10 B4-9 B5-10 B6-9 B7-8 B8-8 B9-9 B11-9 B12-9 B13-9 B14-8 B15+4 A1-9 A2-8 A3-9 A4-8 A5-9 K1-9 K2-9 K3-9 K4-11 K5-9 K6-9 K7-9 W1-8 W2-9 W3-8 W4-8 W5-9 W6-9 W7-9 W8-9 W9-8 W10-9 W11-10 W12-9 L2-9 L3-10 L4-9 L5-9 D3-9 L6-9 L7-9 L8-9 L9-10 D1-9 D2-10 D4-9 D5-9 D6-9 D7-9 D8-9 X1-10 X2-9 X3-9 X4-9
oneShoulderLow&oneSide SH8+7 B15-3 L4-4
oneShoulderLow&pointy B1-5 B15+6
oneShoulderLow&pull SH8-5 B1-6 B3-4 B15+6
oneShoulderLow&sleeve SH8-4 B15-4 L1+8 L3-6 L4-3 D2-3
oneShoulderLow&strain SH8-3 B1-6 B15+7 L1+7 L3-4
oneShoulderLow&swing SH8-5 B8-3 B10+4 A5-4
oneShoulderLow&tight SH8-6 B1-6 B3-5 B15+6 L1+4 L3-4 L4-3
oneShoulderLow&underarm L1+7
oneSide N2-4 N4-3 N7-9 N8-9 SH1-8 SH2-4 SH3-8 SH4-4 SH5-4 SH8+26 B1-4 B2-6 B3-3 B5-4 B8-4 B9-3 B10-3 B11-3 B13-3 B14-4 B15-3 A1-3 A2-6 A5-6 K2-4 K3-4 K4-5 K5-4 W1-4 W2-5 W3-3 W4-3 W5-6 W6-4 W7-4 W8-4 W9-4 W10-3 W11-5 L1-6 L2-4 L3-5 L4+5 L5-3 D3-3 L6-3 L7-3 L8-4 D1-3 D2-4 D4-4 D5-5 D6-3 D7-3 D8-3 X2-3 X3-4 X4-4
oneSide&pull N2-5 N7-4 SH5-3 SH8+5 B1-6 B11-4 B15-4 K3-4 K4-5 W3-4 W9-3 W10-4 L1-3 L3-4 L4+5 D3-3 L7-3 L8-4 L9-6 D2-6 D6-3 D7-4 X2-4
oneSide&rise L9+6
oneSide&sag SH3-5 SH8+12 B13-3 B14-5 A2-4 K5-4 W5-6 W11-3 X3-5
oneSide&short L9+6
oneSide&shoulder N5-4 SH3-4
oneSide&side SH8+6 W11+4 L3-3 L4+4 L9+7
oneSide&sit SH3-3 SH8+6 W2-4
oneSide&slant SH8+6 A2-4 A5-4 W11-4 L9-5 X1-5
oneSide&sleeve SH8-14 L1-4 L2-6 L3-5 L4+10 L6-5 L8-3 L9+4 D1-4 D2-4 D5-5 D6-5
oneSide&sleeveHem SH8-5 L9+7
oneSide&slide N1-4 N3-3 N5+6 N7-7 N8-8 SH2-3 SH5-4 SH8-8 B2-5 B6-4 B8-3 B10-3 B11-3 B14-3 W3-4 W4-4 W5-5 W6-4 W7-3 W9-4 L4-4 L9-3 D5-4 X1+6
oneSide&wing SH8+8
open N1-5 N2-4 N3-3 N6-5 SH1-5 SH4-3 SH5-3 SH7-4 B1-5 B3-4 B6-4 B8-7 B12+13 B13-4 B15-3 A1-7 A2+4 A3-5 W4-3 W10-3 W12-3 L1-3 L2-5 L3-8 L4-4 D3-3 L6+5 L7-3 L8-3 L9-6 D1-11 D2-7 D4-7 D5-3 D6+5 D8-7
open&placket B12+13
open&sleeveHem B8-4 B12-7 L2-4 L6-5 L9-8 D1-8 D6+11 D7-11 D8-7
open&tight B1-5 B6-3 B12+4 D1-5 D2-5 D6-4 D7+6 X2-3
outward N1-4 N2-7 N3-4 N4-4 N5+8 N6-4 N7-4 N8-4 SH1-3 SH2-4 SH3-4 SH4-4 SH5-4 SH6-3 SH7-4 B1-3 B3-7 B4-10 B5-8 B6+8 B7-6 B8-4 B9-3 B10-4 B11-4 B12-3 B13-4 B14-3 B15-6 A1-4 A2-4 A3-3 A4-4 K1-5 K2-3 K3-3 K5-3 K7-4 W1-5 W2-6 W3+5 W4-5 W5-7 W6-10 W7-10 W8+3 W9-3 W10+3 W11-3 W12-4 L1-5 L2-4 L3-4 L4-5 L6-4 L7-4 L8-4 D1-6 D2-6 D4-4 D6-5 D7-5 D8-5 X4-4
outward&past N1-4 N2-6 N5+9 N6-5 SH4-3 B4-9 B6+8
outward&pinch SH1+5 W3-8 W4+5
outward&pull B1-5 B2+4 K4+4 W3-6
outward&rise B2-4
outward&seam W3-5 W8-4 X1+4
outward&shoulder N5+5
outward&shoulderTip SH1+6
outward&sit N2-6 N5+7
outward&slant B1-8 B2+8 B15-4
outward&sleeve SH3-3 B6-3 L9+4
outward&strain B1-5 B2+5 B15-4 K1-5 K4+4
outward&swing N5-6 N8-4 B2-5 B4-8 B5-3 B6+5 W3-4 W5-4 W6-9 W7-8 W8+7 W10+7 D5-5 X1-4
outward&tight B2+6 B3-6 B5-3 B15-5 W3-3
outward&tilt N5-4 SH8+4 X1-3
outward&tummy B2-3 W10+4
outward&waist N5-3 B6-3 K4+3 K6-6 W1-7 W2-8 W3+9 W5-6 W10+4
over N4-6 N7-5 SH1-3 SH2-4 SH3+6 SH5-4 SH7-4 SH8+13 B1+3 B6-4 B7-4 B11-5 B13-3 A2-3 A4-3 A5-4 K1-9 K3+3 K6-11 W11-4 L6-3 D5-4
over>apex SH8-4 B1-5 B3+5 B5+5 B6-11 B7-3
over>arm N5-4 SH1-6 SH2-6 SH3+10 SH4-5 SH5-5 SH6-5 SH7-5 SH8-5 B1-4 B4-3 B5-3 B8-4 B10-3 A1-7 A2-7 A3-4 A4-4 A5-4 K3-3 K4-4 K7-3 W2-4 W3-3 W5-3 W9-4 W10-3 L1-6 L3+6 L5-5 D3-5 L7-4 L8-5 L9-4 D1-7 D2-5 D4-5 D6-4 D8-4 X2-5
over>armhole SH3-4 A1-6 L7+8
over>back N7-6 SH3-5 SH5+6 SH6-5 SH8-5 B15-3 A3-4 A4+3 K1-6 K2-5 K3-9 K4+13 W7-3 L1-3 L4+7 D5-9 X1-3
over>backWaist K2+7 K3-4 K6-6 D8-4
over>blade SH7-5 SH8-4 B8-8 A2-3 A3+8 A4-5 K1-7 K4-8 K5+5
over>bust B1+8 B3+4 B5-5 B6-6 B13-5 B15-3
over>centre K5+7
over>chest N2-3 N6-4 SH3-7 SH5-3 SH6+6 SH8-5 B1+7 B10+4 B11-11 A4-4 K5-4 W2-4 X2-4
over>collarbone N5-4 N8-4 SH3-5 SH5-3 SH6+5 B9-4
over>front A5-5 W6+3 W9-3 L4+9 D5-8
over>hip SH3-3 SH8-4 B2-4 K3-3 W1-6 W2+8 W3-6 W4-7 W5-4 W7-4 W12-5
over>neckSide N5-3 N6+4 SH3-4 B15+3
over>seat B2-3 B4-3 B7-4 K3-4 W9+9
over>shoulder N5+3 N7-3 SH2-4 SH4+5 SH5-4 SH7-5 SH8-4 K3-4 L1-11 L2-4 L3-3 L7-4 D1-4 D7-3
over>shoulderSeam N6+3
over>shoulderTip SH1-7 SH2-9 SH3+9 SH4-10 SH5-7 SH6-5 SH7-5 SH8-4 L4-3 L7-4 D2+6 D7-4 D8-4
over>side SH6+5 SH8-3
over>sleeve SH1-3 SH3-4 SH4-4 SH8-4 B15-4 A1-3 K4-4 W2-3 L1+9 L2-5 L3-5 L6-4 L7-3 L9-3 D1-5 D2-8 D5-8 D6-5
over>sleeveCap SH8-3 B1-4 K4-4 L2+3 L3-7 L4-3 L6-8 L7+8 D2-5 D7-6 X2-3
over>sleeveHem D8+4
over>spine K7+5 W12-4
over>throat N2+5
over>tummy B1-3 W10+8
over>underBust SH8-4 B5-4 A2+5 A3-3 K3-4 W1+10 W2-7 W3-7 W4-7 W5-4 W9-5 W11-4 L7-4 X3-3
over>upperArm SH3+6 A1-4 A2-6 L6-4 L9-3
over>upperBack N7-4 SH8-4 A4-6 K1-7 K2-4 K3+6 K4-4 K5+4
over>upperChest B3-7 B9+7 B10-8 X3-3
over>waist K2+6 K3-5 K6-6 W4-3
overarm N1-3 N2-5 N3-4 N4-6 N5-3 N6-4 N7-7 N8-3 SH1-3 SH2-5 SH3-5 SH4-8 SH5-7 SH6-5 SH7-4 SH8-5 B1-6 B2-6 B3-4 B4-4 B5-4 B6-4 B7-5 B8-4 B9-4 B10-4 B11-6 B12-5 B13-4 B14-4 B15-5 A1-5 A2-3 A3-4 A4-5 A5-5 K1-6 K2-5 K3-7 K4-5 K5-4 K6-4 K7-4 W1-8 W2-4 W3-6 W4-4 W5-4 W6-4 W7-7 W8-5 W9-5 W10-5 W11-4 W12-4 L1-10 L2-8 L3-10 L4-8 L5-4 D3-5 L6-7 L7-8 L8-8 L9-8 D1-5 D2+18 D4-5 D5+6 D6-6 D7-9 D8-7 X1-4 X2-7 X3-4 X4-5
overarm&pull L3-3 D2+8 D7-3
overarm&short SH4-7 B2-6 K3-6 W1-7 L1-7 D3-3 L7-4 L8-5 L9-7 D2+10 D5-6
overarm&strain L3-5 D2+7 D7-3
overarm&tight B1-3 K1-3 L3-7 L7-4 L8-3 D2+9 D5-5 D7-5 X2-4
past N5+6 N6-3 SH1-4 SH2-4 SH3+8 SH7-8 B2-3 B4+12 B5-11 B6+4 B7-6 A2+3 W1+5 D1-8
past&pointy B4+4
past&seam SH2-5 SH3-5 SH4+4
past&shoulder N5-5 N6-3 SH1-4 SH3+9 SH4-9 SH5-3 SH6-3 SH7-6 B4-3 D1-6
past&shoulderSeam N7-4 SH4-3 SH5+6 SH6+5 B4-3
past&shoulderTip SH1-6 SH2-7 SH3+4 SH4+6 SH6-4 SH7-7 B4-3 A2-3
past&sit N2-4 N5+4
past&sleeve L4+4
past&swing SH3+6 SH4-3 SH5-6 SH6-4 B4+11 B6-12
past&tight B4+5 B6-8
past&tip B4+4 B5-4 B6-3
past&twist L4+4
past&up B2-7 B4-3 K3-4 W1+9 W2-5 W3-5 W4-6 D3-3
past&waist B2-4 W1+6 W2-4 W3-3 W4-3
peak N5-4 N6-4 N7-4 SH1-7 SH2-8 SH3-9 SH4-9 SH5-5 SH7+16 B4-5 B5-6 B6-4 B7+4 B8-4 A1-5 A2-3 L1-6 L4-3 L6-7 L7+8 D1-3 D2-3 X1-3
peak&pointy B4-3
peak&pull K4+3 L1+6
peak&sCurve SH7+6
peak&shoulder SH3-6 SH4-6 SH7+6
peak&shoulderSeam N6-4 SH2-3 SH3-4 SH4-5 SH5-4 SH7+7 A5-4
peak&shoulderTip N5-3 SH1-9 SH2-9 SH3-7 SH4-7 SH5-6 SH6-4 SH7+12 SH8-3 B7-4 L2+4 L4-4 L7-5 D2-4 D5-3
peak&slant B15+3 K4+3 L1+4
peak&sleeve SH7-5 L2+4 L7-3 D5-3
peak&sleeveCap SH6-4 SH7-9 B7-4 L1-6 L2-12 L3-4 L4-5 L5-3 L6-8 L7+12 L9-3 D1-5 D2-3 D5-4 D6-4 D7-4 D8-4
peak&small SH4-4 SH5-3 SH6-5 SH7+5 X2-3
peak&tight B15+4
peak&tip SH4-3 SH6-4 SH7+4 B4-3
peak&underarm SH1+4
peak&upperChest B11-3 B15+4
pinch N4-3 N5-4 SH1+7 SH2-6 SH3-6 B3-6 B5-3 B6-5 B10-5 B14-4 A2-4 A5-4 K2-6 K4-4 D4-3 D6-3 X3-3
pinch&shoulderTip SH1+11 SH2-7 SH3-6 SH4-4
pinch&underBust B13+7 B14-4
pinch&underarm A1+7
pinch&upperArm L3+6 D7-3
pinch&waist K6-5 W1-4 W2-4 W3+5
placket N1-6 N2+4 N3-3 N6-4 N7-3 SH1-3 SH2-4 SH4-5 SH7-4 B1-7 B2-4 B3-4 B8-5 B11-7 B12+27 B13-4 B15-4 A1-5 A2-4 A3-5 K1-5 K4-4 W1-3 W3-5 W9-4 W10-3 L3-4 L8-4 D1-3 D2-4 D6-6 D7-3 X2-8
placket&show B8-4 B12+6 D6-4
placket&strain N2-10 N7-3 SH2-7 B1-7 B2-4 B11-7 B12+15 B14-3 B15-6 A1-6 A5-4 K1-6 K4-7 K7-3 W3-9 W5-3 W6-3 W9-5 W10-5 L1-3 L3-7 L8-6 D2-5 D7-4 D8-4 X2-9 X4-3
placket&tight N2+3 B1-5 B12+4
pointy SH1-4 SH2-6 SH3-5 SH4-4 SH5-4 SH7+6 SH8-3 B3-3 B4+14 K1-4 W8-3 W12-8 L2-4 L6-4 L7-4 D8-3 X4-3
pointy&pull B1+5 B4-4 B5-3 B6-4
pointy&seam B1-3 B4-3 B15+4
pointy&shoulder SH7+4
pointy&shoulderTip SH1-7 SH2-6 SH3-6 SH4-5 SH5-4 SH7+10 B4-6 B7-4
pointy&slant B1+4 B15-4
pointy&strain B15+5
pointy&swing B5-5
pointy&tip B4+4 B6-4
pointy&upperChest B4-5 B5+4 B7-4
prominentBlades N1-7 N2-8 N3-7 N4-7 N5-8 N6-8 N7-8 N8-8 SH1-10 SH2-11 SH3-10 SH4-10 SH5-10 SH6-9 SH7-9 SH8-11 B1-9 B2-8 B3-7 B4-8 B5-7 B6-7 B7-8 B8-7 B9-7 B10-7 B11-9 B12-9 B13-7 B14-7 B15-9 A1-9 A2-7 A3-9 A4-8 A5-7 K1-11 K2-7 K3-8 K4+17 K5-10 K6-8 K7-8 W1-7 W2-7 W3-10 W4-7 W5-8 W6-8 W7-8 W8-7 W9-8 W10-8 W11-7 W12-8 L1-8 L2-7 L3-9 L4-7 L5-8 D3-8 L6-7 L7-8 L8-9 L9-7 D1-8 D2-9 D4-8 D5-7 D6-7 D7-8 D8-8 X1-8 X2-10 X3-7 X4-8
prominentBlades&strain N2-4 SH2-5 B1-5 B11-5 B12-4 B15-4 A1-4 K1-6 K4+9 W3-6 W9-4 W10-3 L3-5 L8-5 D2-4 X2-6
pucker SH7-5 B4-5 B5-3 B7+7 B8-3 A1-5 A2-5 K2+4 W12-4 L1-6 L2-15 L4-3 L6+12 L7+7 L9-5 D6-4 D7-5 D8+4 X2-5
pucker&seam L6+3 L7-5
pucker&sleeveCap B7-3 L1-6 L2-14 L6+15 L7-10 D5+4 D8-4
pucker&sleeveSeam B7-3 L4-4 L7+6 D5-3 D8-3 X2-6
pucker&small L6+5 X2-6
pull N7+8 SH1-3 SH4-6 B12-4 K4+3 L3-5 L4-3 D2+3 D7-3
pull&reach N7-3 N8-4 K3-3
pull&roundBack K3+3
pull&seam L6-5 L7+6
pull&seat W9+6
pull&shoulder N5+3 N7-3 SH3-5 SH5+5 B15+3 K3-3 L1-3
pull&shoulderSeam B1-3 B15+5
pull&shoulderTip SH1-7 SH2+10 SH3-3 SH4-12 SH5-4
pull&side SH8-4 B1-3 B2+5 B15-3 L4+5
pull&sideSeam N7-9 N8-4 SH5-4 B11-4 B15-3 K1-6 K4-5 W3-3 W6+6 W7+10 W8-8 W9-6 X2-3
pull&slant B2+4 B11-6 B15+4 K1-5 K4+10 L1+5
pull&sleeve N7-4 N8-5 SH3-3 SH5+9 SH8-4 B11-3 K4-3 W3-5 W6-4 L2-4 L3-8 L5+3 D3-4 L6-3 L7-5 L8+4 L9-4 D1-6 D5-4 D6-5 D7-6
pull&sleeveCap SH3-3 SH4+4 W3-4 L1+5 L2-7 L5+4 L6-5 D2-6
pull&sleeveHem SH2-4 SH4-6 D2+9 D7-4
pull&slide N7-4 N8+4
pull&strain N7+6 N8-7
pull&throat N2+4 N8-3
pull&tight B2+4 B3-4 B6-4 B15+3 L7+3
pull&tilt K4+3
pull&tip SH2+5 SH4-4
pull&tummy W10+6
pull&underarm K4+4 L1+8 D2-4
pull&up N5+4 N7-3 D3+5
pull&upperArm B11-4 L1-3 L3+10 L8-3 D7-3
pull&upperBack N7-5 B11-5 A4-8 K3+7 K4-5 K5-9
pull&upperChest B1-5 B5-3 B9-10 B11+9 B15+6 K4-4
pull&waist B1-3 B2+4 W1-5 W2-6 W3+5 L1-4 L5+4
pull&whole N2-4 N7+6 N8-6 SH2-4 B11-5 B15-3 K1-7 K3-6 K4-6 W3-4 W7-4 W10-3 D3+4 L8-5 D2-3 D5-4 X1-5 X2+9 X3-8
pull&wornOn N2-3 N5+4 N7+4 N8+4 SH2-5 SH4-5 SH5-4 B11-4 B15-4 K1-6 K3-5 K4-5 W3-4 W6-5 W7-4 W9-3 L8-3 D2-3 X2-4
reach N1-6 N2-5 N3-7 N4-5 N6-3 N7-5 SH1-6 SH3-4 SH4-6 SH5-4 SH6-3 SH7-3 SH8-4 B1-5 B2-4 B3-4 B5-8 B6-5 B11+4 B12-3 B13-3 B14-3 B15-3 A1-4 A3-3 A4-5 K1+19 K3-5 K5-3 K6-3 W1-3 W3-4 W4-4 W5-3 W7-3 W9-3 L3-4 L4-5 L5-5 D3-4 L6-3 L8-4 D2-3 D4-4 D5-5 D6-7 X2-4 X4-3
reach&rise B2-4 D3+4
reach&seam K3-5
reach&show N5-4 B8+8 A2-6 K1-4 D6-5
reach&sleeve K1+4 L3+3 L4-6 D3-3 L9-3 D1-3
reach&strain B11+6 K1+4 K4-4 L3-3
reach&swing N8-4 K1+3 L4-6
reach&tight SH2-3 B1-4 B4+4 B5-3 B6-5 B11+6 A1-4 A5-6 K1+9 W3-3 L3-5 L8-3 D7-3 X2-5
reach&tummy W10+4
reach&up N8-4 SH1-6 SH2+6 SH3-5 SH4-6 SH5-4 SH7-4 B2-4 K1-7 W1-4 L1-3 L3+4 L5-3 D3-4 D1-3
reach&upright N1-3 N5-4 N6-3 B10+9 A4-7 K6-3
reach&whole X3+3
realCloth N4-3 SH8-5 B9-3 A5-6 K2-4 K5-3 W2-3 D4-4 X3-4 X4+25
realCloth&tight X4+6
realCloth&toile X4+15
realCloth&wing X4+4
rise N3-4 N4-3 N8+4 B2+12 B14-3 K3+9 K5-3 W1+4 W9+7 W11-5 D3+10 D2-4 D6-3
rise&roundBack K3+4
rise&seat B2-4 W9+4
rise&short SH4-4 B2-5 K3-5 W1+6 D3-4 X2-4 X3-3
rise&shoulder SH3-8 L1+6 D3-3 L8-4 L9-3 D1-5 D2-5
rise&shoulderSeam N6+6 SH4-4
rise&side W11-3 D3+7
rise&skirt N8-5 W9+8
rise&sleeve N5-4 N6-3 N8-5 SH3-10 SH4+6 SH5-5 SH7-3 B2-8 B5-3 K3-7 W1-6 W9-6 W10-4 L1+3 L2-8 L3-8 L4-9 L5-5 D3-8 L6-6 L7-5 L9-10 D1-9 D2-5 D5-4 D6-9 D8-3
rise&sleeveHem B2-10 K3-4 W1-4 L1+6 D3-6 L9+8 D6-6 D7-6 D8-7
rise&slide N7-4 K3-5 W9+6
rise&tight B1-4 L1-3 D3+5 D2-5 D7-4
rise&tummy W10+3 D3-3
rise&underBust B5-5 B13-4 B14-5
rise&underarm A1-3 L9+8
rise&up N8+5 K7-5
rise&waist W1+4 W2-3 W5-3
rise&walk N8-4 W9+7
rise&wavy D3+6 D8-3
rise&whole B2-4 K3-3 W1+4 D3+7 X2-4
rise&wornOn B2+4 W10-5
roundBack N1-7 N2-10 N3-7 N4+4 N5-8 N6-7 N7-7 N8-7 SH1-7 SH2-7 SH3-10 SH4-10 SH5-4 SH6-7 SH7-7 SH8-7 B1-5 B2-6 B3-6 B4-6 B5-6 B6-6 B7-6 B8-5 B9-6 B10-6 B11-6 B12-6 B13-6 B14-6 B15-6 A1-5 A2-5 A3-6 A4-9 A5-7 K1-7 K2-7 K3+22 K4-6 K5-9 K6-7 K7-6 W1-6 W2-6 W3-6 W4-6 W5-6 W6-5 W7-6 W8-6 W9-6 W10-6 W11-6 W12-6 L1-6 L2-6 L3-6 L4-6 L5-6 D3-6 L6-6 L7-6 L8-6 L9-6 D1-7 D2-6 D4-6 D5-7 D6-6 D7-6 D8-6 X1-6 X2-6 X3-5 X4-6
roundBack&tight K1-3
roundBack&upperBack A4-4 K3+4 K5-3
sCurve N3-3 N7+6 SH7+5 B2-4 K4-3 K5-4 W1-3 W6-8 W7-6 W8+16 L9-4
sCurve&sideSeam W6-7 W7-4 W8+19
sCurve&sleeveSeam SH3-3 W8-4 L4+8 L9-4
sCurve&small SH7+6 A1-7 K3+4 K5-3 W8-4 L7-3 X1-3
sCurve&spine SH7-3 K7+6 W8-5 X1-3
sCurve&uneven W8+4 L8-3
sCurve&waist K3-4 K6+4
sag N3-4 N5-3 SH3+5 SH8+6 B14+3 A4-4 K3-3 W2-5 W5+8 W11+4 L1-5 L4-3 L9-3
sag&seat W11+5
sag&shoulder N5-3 N6-3 SH3+5 SH4-6 SH7+4 SH8-5 A2-3
sag&shoulderSeam N6-3 SH3+3 SH4-3 SH5-3 SH6-5 SH7+4 A2-3
sag&side SH8-4 A2+7 W11+6
sag&sideSeam W6-6 W7-3 W11+7
sag&sleeve SH3+8 SH5-3 SH8-3 B14-4 K5-3 W5-6 W11-3 L1-6 L2-6 L3-6 L4-6 L5-4 L6-5 L7-4 L8-4 L9-5 D1-6 D5-5 D6-6 D8-6
sag&sleeveHem SH3-4 L9-6 D7-5 D8+8
sag&throat N2-5 N7+4 K5-3
sag&tight B13+3
sag&twist D8+5
sag&underBust SH8-3 B5-5 B14+10 A2-3 W5-6
sag&underarm SH3-3 SH8-3 B14-3 A1-6 A2+10 W5-3 D4-6
sag&upperBack SH8-3 A4-9 K1-4 K3-5 K5+11
sag&upperChest B9+6
sag&waist N3-4 K5+4 W2-4 W5+8
sag&whole SH8-3 B14-4 X2-5 X3+6
sag&wing SH8+6
seam N1-7 N2-3 N5-5 N7-5 N8-7 SH1-7 SH2-5 SH3-3 SH4+6 SH5+7 SH6+4 SH8-4 B1-6 B2-5 B4-3 B5-3 B8-5 B10-4 B11-3 B14-3 A3-3 A4-3 A5-7 K1-5 K3-4 K4-3 K5-3 K7-3 W1-3 W2-6 W4-4 W5-4 W8-6 L1-5 L2-7 L3-6 L4-3 L6+3 L7+6 L9-3 D2-5 D5-4 D6-4 D7-3 D8-3 X1+5
seam&short SH4+5 SH5-4 W1-3
seam&shoulder SH4-4
seam&shoulderTip SH1-11 SH4+4 SH5+6 SH6-8 SH7+3 L7-3 D2-4
seam&sleeveCap L1-6 L2-6 L3-3 L6+7 L7+9 D7-3
seam&slide N5-3 N7-7 N8-5 SH4-3 SH5+5 SH6-3 W7-5 D5-5
seam&strain SH1-3 B1-3 B12-3 B15+3 K1-3
seam&swing K4+4
seam&tight SH2+5 SH3-4 SH4-7 SH5-6 L1-6 L2-6 L3-8 L4-3 L6-7 L7+13 L8-4 D2-6 D7-5 X2-4
seam&tilt N7-3 SH4-3 SH6-8 W5-4 W6+5 W7+5 L4-5 L6-3 L7-4 L9-4 D5-4 X1-8
seam&tip N7-4 N8-3 W7-4
seam&twist N6-4 SH3-4 SH4-6 SH5-6 SH6-5 SH7-4 A1-4 A4-3 W1-3 W3-3 W6-5 W7-5 W8-4 W11-4 L3-3 L4+3 L5-3 D3-3 L6-5 L7-6 L9-3 D4-4 D8-4 X1+6
seam&up A1+6 A2-3
seam&upperBack N1-4 N6+4 B1-3 B15+4 A4-3 K1-4 K3-3
seam&waist W1+3 W2-4
seam&wavy L2-3 L6+5 L7-7
seat W7+5 W9+13
seat&sideSeam W6+4 W7+9 W9-5 W11-5
seat&sit W9+6
seat&slant W6-4 W9-3
seat&small W9+3
seat&stickOut W9-3
seat&strain W9+14
seat&swing W6-4 W7+8 W9-3
seat&tight W9+11 L3-3 X2-3
seat&tilt W9-3
seat&tip W9+5
seat&underBust B13-3 A2+6 W9-5 W11-3
seat&underarm A2+4
seat&uneven W9-6 W11+5
seat&waistDart W12+5
short N1-4 N6-3 N7-3 N8-3 SH3-6 SH4+8 SH5-4 SH6-6 SH7-3 B2+6 B5-3 B14-3 A1-3 K1-3 K3+6 W1+11 W2-6 W3-3 W4-4 W8-4 L2-6 D3-5 L6-5 L8+4 D2+4 D5-4 D6-3
short&shoulder N5-6 SH2-4 SH3-8 SH4+9 SH7-4 B2-6 K3-5 L1-5 D2-4
short&shoulderTip SH3-3 SH4+5 SH7-3
short&side L1-3 L8-3 L9+5 D6-3
short&sleeve SH4-4 B2-4 W1-5 L1-7 L4-5 L7-4 L8+7 D1-3 D6-4
short&sleeveCap SH4-8 B2-5 K3-4 W1-7 L1+7 L2-9 L6-9 L7+6 L8-4 L9-6 D2-3
short&sleeveHem SH4-3 B2-7 W1-4 L9+7 D6-3 D7-6 D8-4
short&tight B2-4 B15+5
short&tummy B2-9 W10+9
short&underarm A1-5 A2-3 L1-4 L7-3 L8-3 L9+7 D4-4
short&waist SH4-5 B2-6 K3-5 W1+7 W2-3 W3-6 W4-6
short&whole SH4-4 B2-5 K3-4 W1+7 L1-3 D3-4 D2-3 X2-5 X3-5
shortWaisted N1-6 N2-6 N3-6 N4-6 N5-6 N6-6 N7-6 N8-6 SH1-6 SH2-6 SH3-5 SH4-7 SH5-6 SH6-6 SH7-6 SH8-6 B1-6 B2-7 B3-6 B4-7 B5-5 B6-6 B7-6 B8-6 B9-6 B10-6 B11-6 B12-6 B13-6 B14-6 B15-6 A1-6 A2-6 A3-6 A4-5 A5-6 K1-6 K2-6 K3-7 K4-6 K5-6 K6-7 K7-6 W1+6 W2+9 W3-10 W4-10 W5-6 W6-6 W7-6 W8-6 W9-5 W10-6 W11-6 W12-6 L1-7 L2-5 L3-6 L4-6 L5-6 D3-5 L6-6 L7-6 L8-7 L9-7 D1-6 D2-7 D4-7 D5-6 D6-6 D7-6 D8-6 X1-6 X2-6 X3-6 X4-6
shortWaisted&waist K6-4 W1-11 W2+10 W3-9 W4-9 W5-5 W12-3
shoulder N5+10 N7-4 N8-3 SH1-8 SH2-8 SH3+14 SH4+11 SH5-4 SH6-5 B2-4 A1-4 D1+7
shoulder&shoulderSeam SH1-5 SH2-5 SH4+4 SH5-6 SH6-5
shoulder&shoulderTip SH1-5 SH3-7 SH4+4 SH5-6 SH6-4
shoulder&sit N5+3 SH3-3 SH8+3
shoulder&slant L1+4
shoulder&sleeve N5-3 SH5+5 L1+6 L3-4 L4-4 L8-4 D2-4
shoulder&sleeveCap SH3-6 SH4+7 L1-6 L2-4 L7-4 D2-5
shoulder&sleeveHem SH4-6 B15-4 D2+10 D7-5 D8-4
shoulder&slide N5+13 N6-3 N7-9 N8-9 SH1-3 SH2-4 SH4-10 SH5-6 SH6-3 SH7-6 SH8-3 D1-4 D2-3
shoulder&small N5-3 SH2-6 SH3-8 SH4+10 SH7-5 L1-4 L7-3 D2-3 X2-6
shoulder&stickOut N5-5 N6-3 SH1-4 SH3+5 SH4-5 B8-4
shoulder&stickUp N1-4 N5-6 N6+4 SH1-9 SH3-8 SH4-8 SH7-7 SH8-4 L2-4 D1+7
shoulder&strain SH3-5 B1-6 B15+6 L1-4 D2+9
shoulder&tight B1-4 B15+4 D2+5 D7-3
shoulder&tip SH1-5 SH3-7 SH4+4 SH5-6 SH6-4
shoulder&underarm L1+4
shoulder&uneven N5-6 SH2-5 SH3-9 SH4-8 SH5-4 SH6-5 SH7-6 SH8+11 W8-4 W11-6 L9-6 D1-4 D5-3 X1-8
shoulder&up N5+5 N7-4 N8-3 SH2-3 SH3-4 L1-3 D2-5
shoulder&waist SH3-7 SH4-5 B14+5 W5-3
shoulder&wide N5-9 SH1-5 SH3+12 SH4-8 B10-5 A4-4 X3-4
shoulder&wing N5-7 N6-3 SH1-9 SH2-5 SH3-10 SH4-8 SH5-5 SH6-5 SH7-5 SH8-7 B15-3 D1+9 D2-3 D4-5 X4-3
shoulder&wornOn N5+6 N7-5 N8-4 SH2-3 SH3-3 SH4-5
shoulderBack N1-5 N2-7 N3-6 N4-6 N5-6 N6-5 N7-6 N8-6 SH1-7 SH2-8 SH3-8 SH4-7 SH5-8 SH6-6 SH7-6 SH8-7 B1-5 B2-6 B3-5 B4-5 B5-5 B6-5 B7-6 B8-5 B9-6 B10-9 B11+13 B12-5 B13-6 B14-5 B15-6 A1-7 A2-5 A3-6 A5-5 K1-11 K2-7 K3-8 K4-7 K5-7 K6-7 K7-5 W1-5 W2-5 W3-6 W4-5 W5-5 W6-5 W7-6 W8-5 W9-7 W10-5 W11-5 W12-5 L1-5 L2-5 L3-7 L4-6 L5-9 D3-9 L6-7 L7-4 L8-7 L9-5 D1-5 D2-6 D4-7 D5-6 D6-5 D7-5 D8-5 X1-5 X2-6 X3-5 X4-5
shoulderLength N1-3 N2-4 N3-3 N5-5 N6-4 N7-3 SH1-7 SH2-10 SH3-7 SH4+9 SH5-6 SH6-6 SH7-6 SH8-5 B1-4 B3-4 B4-3 B6-3 B7-3 B9-4 B10-3 B11-5 B12-3 B13-4 B15-4 A1-4 A3-5 A4-5 K1-7 K3-3 K4-6 K5+5 K6-4 W1-4 W3-5 W4-3 W9-4 W10-4 L1-5 L2-4 L3-4 L7-4 L8-3 D1-4 D2-4 D4-4 D5-3 D7-4 X2-9 X4-4
shoulderLength&small N2-3 N5-3 SH1-4 SH2-8 SH3-4 SH4+9 SH5-3 SH6-4 SH7-5 B11-4 A1-3 K1-3 W3-4 L1-4 L7-4 D2-3 X2-8
shoulderSeam N2-4 N5-6 N6+7 SH1-7 SH2-5 SH3+7 SH5+9 SH6+17 SH8-3 A5-4 W5-3 W6-3
shoulderSeam&shoulderTip N6-4 N7-4 SH2-9 SH3-10 SH4+5 SH5+4 SH7-8
shoulderSeam&show SH6+5
shoulderSeam&slant SH5+6
shoulderSeam&slide N5-7 N7+5 N8-10 SH6+4
shoulderSeam&small SH2-3 SH4-4 SH5-3 SH6-5 SH7+4 X2-3
shoulderSeam&stickOut SH3-4 SH7+5 B8-3
shoulderSeam&stickUp N6+6 SH5-3 SH6-3
shoulderSeam&strain B1-6 B15+8
shoulderSeam&swing N5-3 N6-4 N8+5 SH2-3 SH5+5 SH6-5 W6-5 W7-5 D5-4
shoulderSeam&tight B1-5 B15+7
shoulderSeam&tilt N6-3 SH1-5 SH2+5 SH3-5 SH6+4 SH7-3 SH8-4 B13-3 W5-5 W6-5 X1-4
shoulderSeam&tip N7-5 N8-10 SH1-3 SH2-6 SH3-6 SH4+4 SH5+6 SH6+4 SH7+3
shoulderSeam&up N6+6
shoulderSeam&wornOn N5-5 N7+11 N8-3 SH3-4 SH5-11
shoulderTip N5-3 N6-5 SH1+17 SH2+15 SH3+4 SH4+4 SH6-7 SH7+5 SH8-3 L3-3 D1-4 D2+4 X2-3
shoulderTip&sit SH1-5 SH2-5 SH3-5 SH5+5 SH6-6 SH7-5 W6-4
shoulderTip&sleeve SH1-4 SH2-13 SH3-4 SH4-8 SH7-4 L1+4 L2+4 L3-5 L4-4 D2+8
shoulderTip&sleeveHem SH2-6 SH4-3 D2+7 D7-4
shoulderTip&sleeveSeam SH1-7 SH2-7 SH4+9 SH5-5 SH6-4 L1-6 L2-3 L4-7 L6-4 L7-4 L9-4 D2-8
shoulderTip&small SH2+4 SH4-7 SH7-3 D1-4 X2-7
shoulderTip&stickUp N6-5 SH1+9 SH2-7 SH3-5 SH4-3 SH5-5 SH6-4 SH7-5 D1-7
shoulderTip&strain SH1-8 SH2+12 SH3-5 SH4-7 SH5-3 L3-4 D2+6
shoulderTip&swing N7-3 SH1-4 SH4-3
shoulderTip&tight N2-7 SH1-11 SH2+14 SH3-4 SH4-10 SH5-5 SH7-3 L3-3 X2-3
shoulderTip&tip SH1-5 SH3-6 SH4+3 SH5-4 SH6-4
shoulderTip&underarm SH2-3 SH4-4 L1+7 D2-6
shoulderTip&upperChest SH1-4 SH2+10 SH4-4 B9-8 B11-4
show N5+9 N7-3 SH3-3 SH6+6 B2-3 B8+10 A1-4 A2+4 A4-4 K1-3 W10-9 L1-4 L2-3 L3-5 L4-6 L5-4 D3-4 L6-3 L7-4 L9-5 D1-5 D2-4 D4-3 D5-4 D6+21 D7-5 D8-5
show&side N5-4 SH6-4 SH8-4 B8+9 L9-6 D7-3 D8-3
show&sleeve B8-7 L1-6 L2-5 L3-8 L4-9 L5-4 L6-5 L7-3 L8-4 D1-6 D5-3 D6+17 D7-3
show&sleeveHem N5-4 SH6-3 B8-9 L9-8 D6+10 D7-7 D8-6 X2-3
show&strain SH2-4 K1-5 K3-3 K4+4 D2+5 D6-4
show&strap N5+15 SH6-4 B8-6 B11-4 B15-3 A2-4 K4-3 D6-8
show&underarm B8-11 A1-7 A2+9 D4-6
show&wavy D6+4
show&whole D6+4 D7-3 X2-3
show&wide D6+3
side SH8+3 B1-4 B2+3 B8+7 B15-3 W11+4 L1-5 D3+5 L9+5
side&slant B1-3 B2+4
side&sleeve SH8-10 L1-5 L3-4 L4+7 L7-3 L8-4 L9+6 D1-3 D2-4
side&sleeveHem SH8-6 B8-5 L9+5 D6+5 D7-4 D8-4
side&strain K4+5
side&tight B1-3 B2+6 B15-4 K4+3 W3-4
side&underarm A1-4 A2+5 L1-3 L9+4 D4-3
side&waist B2+5 W3-4
sideSeam N7-4 N8-6 W6+16 W7+15 W8+17 W9-5 X1-4
sideSeam&slant W6+3 W7+5 W11-5
sideSeam&slide N7-8 N8-11 SH5-5 W6+9 W7+9 W8-7 D5-4
sideSeam&strain B1+8 B15-7 W6-3 W8-5
sideSeam&swing N8-7 W6+9 W7+9 W8+4
sideSeam&tight B3-3 W6-5 W8+6
sideSeam&tilt W6+6 W7+9 W8-7 W11-6
sideSeam&tip B2-3 K3-4 W6+3 W7+3 W8-4 W9-3
sideSeam&uneven SH8-4 W8+8 W11-4 X1-4
sideSeam&up B2-3 K3-4 W6+3 W7+3 W8-4 W9-3
sideSeam&wavy W8+10 L5-4 D3-5 D8-4
sit N1-3 N2+8 N5+4 N7-4 SH1-4 SH2-5 SH3-7 SH7-7 B3-4 B6-3 B9+3 B13-3 A1-3 A2-4 K6-3 K7-3 W1+4 W3-5 W4-8 W6-3 W12-6
sit&tight W9+7
sit&underBust B5+6
sit&upperChest B5+4 B9-3
sit&waist N2-7 N4-3 N5-4 SH5-3 B5-4 B9-3 A2-5 K2-4 K6-4 W1+8 W2+6 W4-10 W5-4 W10-4 W12-7
skin B8+5
skirt N7-3 N8-5 B2-5 K3-3 W1-3 W9+8 X1-5
skirt&slide N8-4 W9+7
skirt&walk N8-4 W9+7
slant SH1+4 B11-6 B15+5 K1-5 K4+9 L1+10 D4-4
slant&sleeve K4-3 L1+9 L2-4 L3-3 L4+3 L6-3 L7-3 D1-3 D5-5 D6-3
slant&sleeveCap SH1-3 K4-4 L1+11 L2-5 L7-4
slant&sleeveHem L1-4 L4-4 L9+8 D6-3 D7-4 D8-5
slant&strain B11-6 B15+5 K1-7 K4+7 L1+6 L3-4
slant&tight B2+8 B11-3 A5-3
slant&underarm SH1+5 A2-3 K4-4 L1+7 D4-5
slant&upperChest B1-4 B9-7 B11-14 B15+17 K4-5 L1-4
slant&waist B2+5
sleeve N8-3 SH2-4 SH8-4 A1-4 A5-3 K1-3 K5-3 L3+11 L4+14 L5+4 D3-4 L8+7 D1+8 D4-4 D6+8 D7-7 D8-5
sleeve&sleeveCap W3-5 L1+4 L2-6 L3-5 L4-3 L5+4 D3-3 L6-5 L8-4
sleeve&sleeveHem W11-4 L9+3
sleeve&slide D5+6
sleeve&small SH4-3 SH7-3 A1-7 L2-5 L3-9 L4-4 L6-7 L7+7 L8+4 D1-4 D6-3 D7-5 X2-6
sleeve&stickOut L1-3 L2-6 L3-4 L4-6 L6-4 D1+12 D6-6
sleeve&stickUp D1+4
sleeve&strain SH2-9 SH3-4 SH4-6 B15-3 L3+9 L4-6 D1-4 D2+7 D6-4 D7-5
sleeve&swing N7-5 N8-9 SH5-4 K1+4 K4-3 W6-4 W7-6 L1-4 L2-4 L3-6 L4+8 L6-4 L8-3 L9-4 D1-5 D5-7 D6-5
sleeve&tight SH2-6 B1-4 K1-4 W3-4 L2-4 L3+17 L4-9 L6-3 L8+3 D1-6 D6-6 D7-11 X2-5
sleeve&twist L1-3 L3-4 L4+15 L9-4 D8-3 X1-9
sleeve&underarm SH1-4 SH4-5 A1-5 A5+7 L1+5 L3-3 L4-7 L6-3 L7-4 L9+4 D2-6 D4-3 D5-7
sleeve&uneven W11-4 L4-7 D5+7
sleeve&up SH3-3 SH4+5 K1-5 W1-3 L1-8 L2-5 L4-7 L5-4 D3-4 L6-4 L7-3 L9-5 D1-5 D2-5 D6+7
sleeve&upperArm L1-4 L2-5 L3+8 L4-6 L6+8 L8-3 D1-6 D6-9
sleeve&wavy L5+4
sleeve&whole A5-5 L4-7 D5+9
sleeve&wing SH1-4 L1-6 L2-6 L3-8 L4-9 L5-4 L6-6 L7-4 L8-4 L9-4 D1+14 D2-3 D4-3 D5-4 D6-8 D8-3
sleeveCap SH3-4 A1-3 A2-3 L1+17 L2+18 L3-4 L4-5 L6+15 L7+10 L9-6 D2-7 D5-3 D6-5 D7-5 D8-5
sleeveCap&slide N7+5 N8-3 L1-4 L2-5 L6-4
sleeveCap&small N2-3 A1-7 L1+7 L2-9 L3-7 L6-13 L7+11 D2-3 D7-7 X2-7
sleeveCap&stickOut D1+7
sleeveCap&stickUp N6-4 B8-4 L1-9 L2+11 L6-9 L7-5 D1-8 D6-4
sleeveCap&strain K4-3 L1+5 L2-5 L3-3 L6-4
sleeveCap&swing D5+7
sleeveCap&tight A1-5 L1-8 L2-7 L3-5 L6-8 L7+13 D7-6
sleeveCap&tilt L1+3
sleeveCap&underarm SH1-3 A1-3 L1+7 L2-6
sleeveCap&wavy L1-9 L6+11 L7-9 D1-3 D8-9
sleeveCap&wing D1+3
sleeveHem SH3-3 SH4-3 B2-4 A1-3 A2-4 K2-6 W11-4 L1-6 L2-6 L3-10 L4-6 D3-3 L6-8 L7-5 L8-3 L9+16 D1-3 D5-5 D6+10 D7+17 D8+16 X1-3 X2-4 X3-4
sleeveHem&small L1-4 L3-6 L7-4 L9-8 D2-4 D6-5 D7+14 D8-9 X2-11
sleeveHem&strain SH2-4 B1-4 B11-3 B15-4 K1-3 K4-3 W3-5 L1-5 L3-10 L4-3 L8-4 L9-10 D6-7 D8+13 X2-4
sleeveHem&tight B1-3 K1-3 W3-3 L1-3 L3-11 L7-4 L8-4 L9-9 D2-6 D6-7 D7+16 D8-12 X2-5
sleeveHem&tilt W5-3 W6-3 W7-3 L1-5 L4-7 L9+13 D6-5 D7-8 D8-8 X1-3
sleeveHem&twist L4-5 L9-7 D7-4 D8+10 X1-3
sleeveHem&underarm A1-7 A2-6 L1-4 L6-4 L7-4 L9+4 D4-7 D6+5 D7-5 D8-6 X3-4
sleeveHem&uneven SH8-3 W11-6 L1-3 L4-5 L9+12 D5-7 D6-6 D7-8 X1-7
sleeveHem&wavy L4-3 L6-5 L7-3 L9-9 D1-3 D6-7 D7-10 D8+20
sleeveHem&wide N5-6 SH3-6 B6-5 B8-6 B10-7 B13-4 A4-6 W4-5 L2-8 L4-4 L6-4 L9-8 D1-4 D6+11 D7-9 D8-8 X3-6
sleeveSeam N2-3 N4-3 N5-3 N6-4 N7-3 N8-5 SH1-5 SH2-5 SH3+9 SH4+5 SH5-6 SH6-8 SH7-4 SH8-3 B7-4 B8-4 B10-4 B11-3 B13-3 B15-3 A1-3 A2-3 A3-3 A5-4 K2-3 K6-3 K7-3 W1-4 W2-3 W5-4 W6-6 W7-4 W8-5 W12-3 L1-8 L2-7 L3-10 L4+11 L5-4 D3-4 L6-4 L7+8 L8-10 L9-8 D1-7 D2-9 D4-4 D5-8 D6-7 D7-6 D8-8 X1-7 X2-6 X3-3
sleeveSeam&twist L4+9 L9-3 D8-4 X1-8
sleeveSeam&wavy L6-4 L7+7
sleeveless N1-5 N3-3 N7-3 SH5-6 B12-5 B13-3 A2-3 A3+5 A4-4 A5-4 D5-3
slide N5+10 N7+10 N8+11 SH4-4 K3-5 W5-3 D5+4
slide&squareShoulders N8-4 SH2+5
slide&stickOut W12+4
slide&strain N8-4
slide&swing N7-5
slide&tip N5-4 N7-8 N8+4 SH2+3 SH6+5 B7+4 W7-3 D5-3
slide&up N6+6
slide&upperBack N7+7 N8-4 K1-3 W7-3
slide&walk N8-4 W9+7
slide&whole N7+7 N8+6 SH5-3 D5-7 X2-4 X3-4
slide&wornOn N5+5 N7+4 N8+4 SH3-4 SH5-10 SH8-4 D5-4
slopingShoulders N1-8 N2-8 N3-8 N4-8 N5-9 N6-9 N7-8 N8-8 SH1+21 SH3-12 SH4-11 SH5-11 SH6-10 SH7-9 B1-7 B2-8 B3-8 B4-8 B5-9 B6-8 B7-8 B8-8 B9-8 B10-8 B11-8 B12-8 B13-9 B14-8 B15-9 A1-9 A2-7 A3-8 A4-8 A5-10 K1-9 K2-8 K3-9 K4-10 K5-9 K6-8 K7-8 W1-8 W2-8 W3-8 W4-8 W5-10 W6-8 W7-8 W8-8 W9-8 W10-8 W11-8 W12-8 L1-9 L2-8 L3-8 L4-8 L5-8 D3-8 L6-8 L7-8 L8-8 L9-8 D1-9 D2-8 D4-8 D5-8 D6-8 D7-8 D8-9 X1-8 X2-8 X3-9 X4-8
slopingShoulders&underarm SH1+5 A5-4 D4-4
small N1-4 N2+5 N5-5 N6-5 N7-5 N8-4 SH1-4 SH2-5 SH3-6 SH5-5 SH6-5 SH8-4 B3-5 B4-4 B5-4 B6-4 B7-4 B8-5 B9-5 B10-4 B12-9 B14-6 B15-5 A2-5 A3-4 A4-4 A5-5 K2-4 K3-4 K4-6 K5-7 K6-3 K7-6 W2-7 W4-5 W5-4 W6-3 W7-4 W8-4 W10-3 W11-4 W12-4 L2-5 L3-5 L4-4 L5-4 D3-4 L6-5 L8-5 L9-4 D1-4 D2-7 D4-4 D5-4 D6-4 D8-5 X1-4 X2+18 X3-6
small&tight B1+7 B3-6 B6-3
small&tummy W10+8 X2-6
small&underarm A1+5 A2-5 X2-4
small&upperArm L1-5 L3+8 L6-3 L7-4 D2-4 D7-5 X2-8
small&upperBack A1-3 A4-7 K1+9 K3-6 K5-3 X2-8
small&upperChest N2-4 SH2-3 B1-6 B5-4 B9-8 B10-4 B11+8 B15-6 A1-4 W3-4 X2-8
small&waist N2-3 W1-9 W2-5 W3+14 W4-12 W5-3 X2-11
small&washed N2-6 N3-4 N4-3 N7-3 SH2-4 SH4-5 SH7-4 SH8-3 B1-6 B2-3 B6-4 B7-3 B11-5 B12-3 B13-4 B15-3 A1-6 A3-3 A4-3 A5-3 K1-5 K3-3 K4-3 K6-3 W1-4 W3-6 W5-3 W6-3 W7-3 W9-4 W10-4 W11-3 W12-3 L1-5 L3-5 L5-4 D3-4 L7-4 L8-4 D2-3 D4-3 D6-3 D7-5 X2-10 X4+10
small&whole N2-3 B1-3 A1-4 W3-3 L6+5 L7-6 D7-3 X2+10 X3-9
smallBust SH1-4 SH2-3 SH5-3 SH6-3 B1-9 B2-3 B3+16 B4-5 B5-7 B6-6 B8-4 B9-4 B13-6 B14-4 B15-4 A1-3 A4-3 K2-4 K5-3 W3-3 W4-4 W8-3 W9-3 L2-3 D4-3 D7-3 X2-4 X3-5
smooth B5-4 B6-3 B7+4 D8+4
smooth&tip B5-4 B7+5
spine N3-3 N8-3 SH7-5 K7+8 W8-6 W12-4 L4-4 X1-5
squareShoulders N1-8 N2-8 N3-8 N4-9 N5-10 N6-10 N7-9 N8-8 SH1-14 SH2+21 SH3-14 SH4-13 SH5-6 SH6-11 SH7-11 SH8-12 B1-8 B2-9 B3-9 B4-8 B5-9 B6-8 B7-9 B8-8 B9-9 B10-8 B11-9 B12-9 B13-9 B14-8 B15-9 A1-9 A2-8 A3-8 A4-7 A5-8 K1-9 K2-9 K3-9 K4-9 K5-10 K6-9 K7-9 W1-8 W2-9 W3-9 W4-8 W5-9 W6-9 W7-9 W8-9 W9-8 W10-9 W11-9 W12-9 L1-9 L2-9 L3-8 L4-8 L5-9 D3-9 L6-8 L7-8 L8-8 L9-9 D1-10 D2-9 D4-8 D5-9 D6-8 D7-9 D8-8 X1-9 X2-9 X3-9 X4-9
squareShoulders&strain SH2+4
squareShoulders&tip N8-4 SH1-3 SH2+8 K4-3
stickOut N1-5 SH1-3 SH4-3 SH7+8 B5-3 A2-6 W5-4 W9-3 W10+7 W12+7 L2-4 L4-3 D1+12 D6-3
stickOut&tight B4+6 B5-4 B6-6
stickOut&tip W12+6
stickOut&tummy D3+3
stickOut&waist B2-4 W5-5 W10+6 W12-3
stickOut&waistDart W12+8
stickOut&wing D1+4
stickUp N1-3 N5-4 N6+5 SH1+4 SH2-5 SH3-9 SH4-5 SH5-4 SH6-4 B4-4 B8-4 W12-4 L1-5 L2+9 L6-5 D1+6
stiff D1+4
strain N4-5 SH2+4 SH4-5 B1+5 B6-4 B10-3 B11+4 B12+3 B15+7 K4+6 W3+8 W8-5 L3+6 L9-4 D7-4 D8+5
strain&tight B1+5 W8-5
strain&tilt B15+4 L1+3 L3-3
strain&tip SH2+4
strain&tummy W3-5 W10+10 L3-3 X2-3
strain&twist D7-4 D8+7
strain&underarm A1+7 A2-4 L1+6 L3-5 D4-4
strain&uneven L9-9 D2-3 D7-4 D8+7
strain&upperArm L3+8
strain&upperBack N7-3 B1-4 B11-4 B15+4 A4-6 K1+6 K3-7 K4-4 K5-5 L3-4 X2-3
strain&upperChest B5-3 B9-12 B10-4 B11+5 B15+10 K1-3 W3-4 L3-4 X2-3
strain&waist W1-3 W2-4 W3+12 W4-7
strain&whole N2-3 SH2-4 B1-5 B11-6 B12-4 B15-3 A1-4 K1-5 K4-4 W3-6 W9-4 W10-3 L3-6 L8-3 D2-3 X1-3 X2+17 X3-10
strain&wornOn N7+6 N8-7
strap N1-6 N2-6 N3-5 N4-4 N5+15 N6-5 N7-4 N8-5 SH1-4 SH2-4 SH3-4 SH4-4 SH5-4 SH6-7 SH7-4 SH8-4 B1-5 B2-7 B3-4 B4-4 B5-4 B6-5 B7-4 B8-8 B9-4 B10-7 B11+6 B12-6 B13-4 B14-6 A1-4 A2-6 A3-5 A4-5 A5-6 K1-4 K2-4 K3-4 K4-5 K5-4 K6-4 K7-4 W1-4 W2-4 W3-4 W4-4 W5-6 W6-5 W7-4 W8-4 W9-4 W10-5 W11-4 W12-4 L1-4 L2-4 L3-4 L4-4 L5-4 D3-4 L6-4 L7-4 L8-4 L9-4 D1-5 D2-4 D4-5 D5-5 D6-9 D7-4 D8-4 X1-4 X2-4 X3-4 X4-4
swing N2-4 N7-5 N8+5 SH6-7 B1-4 B4+4 K4+4 W6+4 W7+5
swing&tight B1-3 B4-4
swing&tip N7-5
swing&tummy W5+4
swing&uneven W11-4
swing&up W10+5
swing&waist B2-3 W1-3
throat N1-4 N2+11 N3-4 N5-5 N6-3 N7+4 N8-5 SH4-3 B2-3 B11-3 B15-4 A1-4 K1-4 K7-3 W3-4 W9-3 W10-4 L3-3 L8-3 D7-3 X2-4
throat&tight N2+6
throat&up N2-4 N7+5
tight SH4-4 B1+6 A5-4 K1+6 W3+5 L1-3 L3+8 L8+3 X2+7
tight&tilt B2+4
tight&toile X4+6
tight&tummy W3+3 W10+8 X2-3
tight&underBust B2-3 B3-4 B6-4
tight&underarm A1+12 A2-8 A5-4 L3-3 D2-3 D4-5 X2-4
tight&up N6+5 B2+3
tight&upperArm L3+8 D7-4
tight&upperBack N7-4 SH2-3 A1-3 A4-9 K1+10 K3-10 K4-4 K5-6 W3-3 L3-5 L8-3 D7-3 X2-5
tight&upperChest SH2-4 B1-9 B3-4 B5+6 B6-3 B9-11 B10-3 B11+12 K1-4 L3-4 X2-4
tight&waist B1-4 W2-5 W3+12 W4-9 W10-5
tight&whole N2-6 N7-4 N8-3 SH2-5 B1-7 B11-4 B15-3 A1-6 K1-6 W3-7 W9-5 W10-3 W11-3 L3-8 L5-4 D3-6 L8-6 D2-4 D5-4 D7-6 X1-5 X2+18 X3-12 X4-3
tight&wide B3+4
tight&wing X4+3
tilt N5-3 SH3-5 W4-5 W5+5 W6+7 W7+8 W8-4 L4-3 L9+5 D8-4
tilt&underarm SH1+5 L1+5 L3-4
tilt&up B2+7 K3+5 W5-5 X1-6
tilt&upperChest B11-4 B15+6
tilt&waist W4-5 W5+6
tip N5-3 N7-5 SH1-3 SH2+4 SH3-6 SH7+4 B4+3 B6-5 B7+4
tip&up N6+4 B2-3 K3-3 W6+3 W7+3 W8-3 W9-3
tip&upperChest B4-5 B5+4 B7-4
tip&waistDart B7-6 W12+5
toPlace N2-4 N5-4 SH1+4 SH4+3 SH6-3 B4-7 B15+4 A2-3 W3-3 W4-3 L8-3
toPlace>apex N2-3 SH4-3 B1+5 B4-8 B5+4 B6-6 B15+8 W8-4 D2-3
toPlace>arm N5-3 N7-4 SH1+4 SH3-6 SH5+5 W7-4
toPlace>armhole SH1+8 A1-5 K1-3 K4+6 L1-4 L6+4
toPlace>back N7+5 N8-4 SH5-4 A4-4 K1-4 K3-4 K5-4 W6-3 W7+4 W8-3
toPlace>bust N5-4 B3-7 B6-4 B8+7 B15+4 W3-3
toPlace>chest SH2+5 X3-4
toPlace>collarbone B4-4 B5-6 B6+7
toPlace>dart B8+4 B10-3
toPlace>elbow N6-3 SH1-3 SH3+7 SH4-6 SH5-4 SH8-3 B5-3 B8-3 B15-3 A4-3 W2-3 W7-3 W8-3 W11-3 L1-5 L2-4 L4-7 L5-3 L6-6 L7-6 L8-8 L9-5 D1-4 D2-3 D5-4 D6-5 D7-4 D8-3
toPlace>front B2-9 W5+10 X1-12 X3-3
toPlace>nape N3-3 N8+3 K7-5 W5-4
toPlace>neck N1+4 N2-6 SH1-3 B15-3
toPlace>seat W6-7 W7+8 W9-3 W11-4
toPlace>shoulder SH4+6 SH7-4 A1-8
toPlace>side B1-4 B2+3 K1-5 K4+5
toPlace>sideSeam K4+5
toPlace>sleeve SH3-3 B8-3 A2-3 L1-4 L4-4 L5-3 L6-8 L7+4 D1-4 D2-4 D6+4 D7-4
toPlace>sleeveHem SH2-7 SH3-3 SH4-9 B15-5 L1-4 D2+13 D7-8 D8-6
toPlace>throat N8-3
toPlace>tummy W10-4
toPlace>underBust B6-3 B13-3
toPlace>underarm SH1+8 B5-7 B6+8 A2-4 L1+9 D2-4 D4-6
toPlace>upperChest B5+7 B6-4 B7-3 B9-5
toPlace>waist SH3-5 B10-4 B14-4 A4-3 K4+4 W1-4 W4-8 L1-4 L5+4 D3-4 D4+8
toile N1-3 N5-3 N6-3 SH1-3 SH8-3 B1-3 B3-3 B5-4 B6-4 B8-3 B9-3 B13-3 A3-3 A4-3 K2-3 K6-3 W4-4 W6-3 L1-3 L4-3 D4-4 D5-3 X2-3 X3-6 X4+23
toile&wing X4+4
tummy B2-5 W7-4 W10+19 X2-4
tummy&up W10+3
tummy&waist W3+4 W5+3 W10-5
twist SH8-3 W5-3 W7-3 W8-7 W11-6 L1-3 L3-4 L4+16 L6-3 L7-3 L9-8 D5-4 D8+3 X1+21 X2-4 X3-5
twist&uneven L4-3 X1+3
twist&whole L4-8 X1+18 X2-8 X3-8
underBust N1-4 N2-4 N4-3 SH1-3 SH8-3 B1-5 B2-5 B3-8 B4-7 B5+11 B6-8 B7-4 B8-5 B9-4 B10-5 B12-3 B13+30 B14+15 A4-5 A5-4 K2-3 K5-4 K6-4 W1+4 W2-4 W3-4 W4-8 W5-3 W12-3 L2-3 D4-4 D5-3 X2-7 X3-9 X4-3
underBust&upright SH8-3 B5-6 B10-10 B13+15 B14-12 A4-7 K6-5 W4-3 D4-4
underBust&waist B5-7 B13-12 B14-4 A2-4 K3-3 K6-4 W1+10 W2-8 W3-8 W4-8 W5-4
underBust&wavy B5-4 B9-4 B13+3 B14+8 D8-5
underBust&whole B13-4 W2+4 D5-5 X2-6 X3-6
underBust&wide N5-6 SH3-5 B5-4 B6-3 B10-7 B13+9 B14-6 A2-3 A4-6 W1-3 W4-3 L2-3 D6-4 X3-5
underarm B8-12 A1+14 A2+13 A3-4 A5-5 L4-5 L7-4 D4+16 D5-4
underarm&up B5+5 B6-5 B7-4 A1+4 A2-6 L7-4 L9-3 D4-4
uneven SH3-4 SH4-3 SH8+7 B4-5 B5-3 W6-4 W9-3 W11+8 L4-12 L9+8 D1-3 D2-3 D5+6 D6-4 D7-5 X1+9
uneven&waist W2-4 W5+8
uneven&wavy D8-3
up N2-5 N3-3 N7+3 SH1-4 SH4-5 B6-5 B10-4 K1-4 K2-3 K7-5 W1+3 W4-4 W5-5 L1-5 L9-4 D6+4 X1-4
up&waist K3-3 W1+5 W2+4 W3-4 W4-6 W5-4
up&whole D3+6 X2-5
up&wornOn N5+4 N7-4 N8-4 SH2-3 SH4-5 K3-3
upperArm N2-3 B1-4 B11-4 A1-5 A2-5 K1-4 K4-4 K5-3 W3-4 L1-5 L2-3 L3+21 L4-8 L5-3 L6+5 L7-6 L8-5 L9-3 D1-7 D2-3 D5-4 D6-9 D7-10 D8-4 X2-6
upperBack N2-3 N3-3 SH5-4 B1-5 B10-3 B11-4 B14-3 A3-6 A4+13 K1+10 K3+7 K4-5 K5+8 W1-3 W2-6 W3-4 W4-8 W7-3 W11-6 L3-4 D5-3 X1-3 X2-4 X3-6
upperBack&waist A4-10 K1-5 K2+3 K3+5 K6+7 W1-6 W2-9 W3-6 W4-9 W5-5
upperBack&wide B10-4 A4+8 K1-4 K3-3 K5-4
upperChest B1-6 B3-5 B4-3 B5+6 B6-4 B9+18 B10+4 B11+12 B14-4 B15+7 X2-4
upperChest&upright B9-4 B10+6 A4-7
upperChest&wavy B5-4 B9+6 B11-8 B15-4 D8-5
upperChest&wide N5-6 SH3-3 B3-4 B9-7 B10+10 B15-3 A4-7 W4-3 D6-3 X3-4
upright SH5-5 SH8-3 B1-4 B3-4 B6-5 B8-5 B9-4 B10+18 B13+7 B14-7 A3-6 A4+13 A5-10 K2-14 K6+11 W2-6 W4+6 D5-4 X3+5
upright&waist B10-8 A4-5 K6-8 W2-14 W3-7 W4+13 D4+7
upright&wavy B10+4 B13+4 B14-4 A3-4 A4+3 W4+4 L6-4 D8-5
upright&whole SH8-5 B10-10 B13-4 A4-8 K6-6 W2-3 W4-4 D4-4 D5-5 X1-3 X2-9 X3+13
upright&wide B10+5
vNeck N1+10 N2+6 N3-6 N4-4 N5-7 N6-7 N7-5 N8-5 SH1-7 SH2-4 SH3-5 SH4-6 SH5-4 SH6-5 SH7+5 B3-4 B8-7 B9-3 B10-4 B12-5 B13-5 B15-6 A1-5 A2-5 A3-5 A4-4 K1-3 K4-4 K6-4 K7-4 W3-3 W4-5 W7-3 W8-3 W9-3 W10-4 W12-3 L1-4 L2-3 L3-3 L6-3 L7-4 L8-4 D1-3 D2-3 D7-4 X2-4 X3-6 X4-3
waist B2-4 A4-4 K2-3 K3-3 W1+11 W2+13 W3+15 W4+18 W9-5
waist&waistDart W2-5 W12+6
waist&wavy W1-6 W2+5 W3-4 W4+4
waistDart N1-3 N2-4 N5-4 SH2-4 SH3-3 B1-4 B4-8 B5-10 B7-11 B8-4 B10-4 B11-4 B12-5 B13-3 B14-4 B15-4 A1-4 A2-3 A4-4 K1-4 K2-3 K4-5 K6-4 K7-3 W1-4 W2-6 W3+7 W4-5 W5-4 W9-5 W10-4 W11-3 W12+9 L2-3 L3-5 L8-4 D1-3 D2-4 D6-3 D7-3 X2-6 X3-4
walk N7-4 N8-5 B2-3 W1-3 W9+7
want>dart SH3-4 B5-8 B6-7 B7-6 K2-4 K6+4 W1-3 W3-4 W11-3 W12-6 L1-3 L8+6 X2-3
want>neck N1-4 N2-4 N5-3 SH7-4 B8-4 A5+7
want>placket N2+4 B12-4
want>underBust B14-4
washed N1-4 N2-7 N3-5 N4-4 N5-4 N6-4 N7-5 N8-4 SH1-4 SH2-5 SH3-3 SH4-6 SH5-4 SH6-4 SH7-5 SH8-4 B1-7 B2-5 B3-3 B4-4 B5-4 B6-5 B7-4 B8-4 B9-4 B10-4 B11-6 B12-4 B13-5 B14-4 B15-4 A1-6 A2-4 A3-4 A4-4 A5-5 K1-7 K2-4 K3-4 K4-5 K5-3 K6-4 K7-4 W1-5 W2-3 W3-7 W4-4 W5-4 W6-4 W7-4 W8-4 W9-5 W10-5 W11-4 W12-4 L1-6 L2-4 L3-6 L4-4 L5-5 D3-5 L6-4 L7-5 L8-5 L9-4 D1-4 D2-4 D4-4 D5-4 D6-4 D7-6 D8-4 X1-4 X2-10 X3-4 X4+10
wavy N3-4 SH7-3 B5-4 B6-3 B7+6 B8-4 B9+3 B11-3 A1-4 A2-4 A3-4 K3-5 K6-5 K7-5 W1-4 L1-4 L2-4 L6+5 L7+5 L9-6 D1-3 D6-5 D7-6 D8+17
wavy&whole D3+3
whole N2-3 B1-3 B2-3 B10-4 B11-3 B13-3 B14-6 A1-3 A4-4 K1-6 K3-3 W3-3 W5-4 L3-4 L4-6 L5-3 L7-9 D5+4 D7-3 X1+8 X2+23 X3+20
whole&wide N5-6 SH3-5 B6-5 B10-7 B13-3 A4-6 W4-5 D6-5 X1-3 X2-9 X3+11
wide N1-9 N2-4 N5+12 N8-3 SH1-4 SH3+6 SH4-5 B1-4 B3-7 B4-4 B5-5 B6+9 B8-4 B9-9 B10+12 B14-3 A4+8 K1-4 K2-3 K3-3 K5-7 W1-3 W3-4 W12-4 L9-3 D1-4 D5-3 D6+6 D7-4 D8-4 X2-3
widerHips N1-5 N2-5 N3-5 N4-5 N5-5 N6-5 N7-6 N8-5 SH1-4 SH2-4 SH3-5 SH4-5 SH5-4 SH6-5 SH7-4 SH8-4 B1-4 B2-7 B3-6 B4-4 B5-4 B6-5 B7-4 B8-4 B9-4 B10-6 B11-5 B12-5 B13-4 B14-6 B15-4 A1-4 A2-6 A3-5 A4-5 A5-5 K1-4 K2-5 K3-4 K4-4 K5-4 K6-4 K7-5 W1-4 W2-5 W3-4 W4-5 W5-5 W6-5 W8-5 W9+9 W10-5 W11-4 W12-6 L1-4 L2-4 L3-4 L4-4 L5-5 D3-5 L6-6 L7-4 L8-4 L9-4 D1-4 D2-4 D4-4 D5-5 D6-6 D7-4 D8-4 X1-6 X2-4 X3-6 X4-5
wing N1-6 N2-6 N3-6 N4-6 N5-7 N6-6 N7-6 N8-5 SH1+5 SH2-6 SH3-10 SH4-10 SH5-6 SH6-6 SH7-10 B1-5 B2-6 B3-6 B4-5 B5-6 B6-6 B7-6 B8-7 B9-6 B10-6 B11-6 B12-6 B13-6 B14-6 B15-6 A1-10 A2-4 A3-6 A4-6 A5-6 K1-5 K2-6 K3-5 K4-6 K5-6 K6-6 K7-6 W1-6 W2-5 W3-5 W4-6 W5-6 W6-6 W7-5 W8-6 W9-6 W10-5 W11-6 W12-6 L1-8 L2-7 L3-8 L4-10 L5-6 D3-6 L6-7 L7-9 L8-6 L9-7 D1+21 D2-7 D4+6 D5-7 D6-8 D7-6 D8-6 X1-6 X2-5 X3-7
wornOn N5+6 N7+10 N8+3 SH2-4 SH3-5 SH4-5 SH5-12 SH6-5 SH8-6 K1-6 K3-6 K4-5 W6-5 W7-4 W10-8 D5-6
zip N3+3 W3+4
~abdomen B2-7 W10+9
~accident SH4-3 B2-4 K3-4 W1+5 D3-3 X2-4 X3-4
~accordion K2-3 W2+7 W3-5 W4-7
~adjustment B1+8 B2-4 B3+7 B4-6 B5-6 B6-6 B9-3 B13-4 B14-3 B15-5 A1-3 W8-3 X2-4
~against N2+3 B8+3
~aim B4-6 B5+4
~all N7+4 SH5-4 B2-4 W1+9 W2+6 L4-4 D3-5 L7-5 D4+3 D5+7 X2+5 X3+7
~angel N5-4 SH1-5 SH3-5 SH4-5 SH7-3 SH8-4 D1+6
~angl SH7+3 K4+3 L1+3
~ann B1-3 B7-3 A3-4 K5-4 L1-8 L2+7 L3-5 L4-6 L6-4 L8-3 L9-3 D1-5 D5-3 D6-5 D8-4
~anywher N2-6 N3-3 SH4-6 B1-5 B6-4 B11-4 B13-4 A1-4 K1-4 W3-5 W9-3 L1-4 L3-4 D7-4 X2+7 X4-3
~apart N5-4 B3-5 B4-5 B5-5 B6+10 B12+4 A4-4 W4-4 W12-5 X3-5
~apex N5-4 SH4-3 B1-9 B3-9 B5+14 B6+6 B7-8 B10-4 B11-4 B13-3 A4-4 W4-4 D6-3 X2-4 X3-4
~appear L4-4 L6+5 D5-4
~arch W8+4
~arm B8+3 B11+4 A1+8 A2+6 A3+3 A4+3 A5+3 L3+7 L5+4 D3+7 D4+10 X1-3 X3-3
~armhol B8+6 B11+5 A1+4 A2+3 A3+6 A5+7 L7+7
~armpit SH8-3 B6+5 B7-3 B10-3 B14-3 A1+9 A2+8 A5+18 W4-3
~armsc SH3-4 SH7+4 B8+4 A1+6 A2+3 A5-4 L7+5
~armse SH4+4
~askew N2-4 SH8-3 W11-5 L9-5 D5-5 X1+6 X3-4
~asymmetric SH3-5 SH4-5 SH7-3 SH8+7 X1-5
~asymmetrical SH1-3 SH2-3 SH3-3 SH4-3 SH5-3 SH8+7 B10-3 B15-5 L1-4
~axi B4-3 B5-3 B6+4
~back N3+4 N7+5 A4+8 K1+8 K2+6 K3+14 K5+10 K6+6 D5+4
~backsid W9+6
~backward N2-5 N5-4 N7+16 N8-4 SH3-4 B15-3 W7+5 W9-3
~bag N8-3 SH1-4 SH6-4 B2-3 B6-3 B8+11 B10-5 B13+4 B14-6 A1-4 A3-5 A5-7 K5-4 K6+4 W5-4 L2-3 L3-5 L5-3 D3-4 D4-5 D5-3 X2-5 X4-3
~balanc D5+5 X1-5
~band N3-3 B12+6 A2+5 D7+4 D8-3
~bandag B1+4
~barber L4-5 X1+4
~bas N1-3 N2+9 N3-6 N5-5 N8-4 SH2+4 B15-5 K7+9 X2-3
~bat SH1-6 A1-5 D1-9 D4+5
~batw L3-5 L5-3 D2+5 D5+4
~behind N3+6 N7+7 SH2-3 SH3-4 SH4-3 SH5+14 SH6-5 B8-6 B10-6 A2-3 A3+12 A4+5 A5-4 K1-3 K7-5 W7+6 L6-6 D4-3 D5+4 X3-3
~bel W10+6
~below SH3+3 B5+7 B8-4 B13+8 B14+8 A2+13 W1-3 W5-3 W12+6 D4-5
~belt W2+3
~bend N1+6 L3-11 L8+21
~besid B4-8 B5-11 B6+10 B10+4 A4+4
~between N1-5 N6+8 B1-4 B4-3 B6+5 B9+4 B11+9 B12+4 B15+12 K4-7
~beyond SH3+7 SH4-8 SH7-4 B4+5 B6-5
~bia L4-5 L9-6 D7-3 D8+10 X1-5
~bicep L1-3 L2-5 L3+13 L6-3 D2-6 D7-4
~big N2-4 N3-3 N4-3 N5-4 N6-3 N7-3 N8-3 SH1-4 SH4-3 SH5-3 SH6-3 SH7-4 B1-7 B2-4 B3+13 B4-5 B5-5 B7-3 B8-6 B9-3 B10-5 B12-4 B14-4 B15-4 A1-4 A2+4 A3-4 A4-4 A5-3 K1-3 K2-4 K7-3 W1-3 W2-3 W3-4 W4+5 W5-4 W6-3 W8-3 W9+4 W10-3 W12-3 L1-4 L2-4 L3-5 L4-5 L5-3 D3-3 L6+10 L7-6 L8-3 L9-6 D1-5 D2-3 D4-5 D5-4 D6+7 D7-4 D8-10 X1-4 X2-3 X3+11 X4-3
~bigger N5-3 SH3+6 SH4-5 SH7-4 B6-3 B8-4 A2-11 K6+4 W3-3 L1-5 L2-8 D1-3 D6-4 X3-3
~billow B13+6 B14-6 K2-6 K6+6
~bind N1-3 B1+4 A1+9 A2-3 K1+3 K4-4 L7-3 L8+7 L9-3 D6-3 D7+5 D8-5
~bingo L2-5 L3+5 L6-4 D1-3 X3-4
~bit SH7-3 A1+4 A5-4
~blad K1+11 K4+19 K5+9
~blister B7+8
~blou N2+5 N7+5 B3-3 B8-4 B13-9 A4-4 K6-9 W4-4 D3+6 X1+4 X2+3 X3-8 X4+4
~bodic B2-6 B14+6 K3-3 W1+9 W2+7 W5-3 D3+4 L6-6 L7+5
~bon N7-4 N8-4 SH8-3 B11-3 K1-8 K4+9 D2-3
~boob B1+7 B3+10 B8+4 B9+3 B10-3 B13-5 D6+3 X3-3
~bosom B1+10 B3+8 B4-4 B5-5 B6-6 B8-3 B14-3 B15-4 L3-3 X2-4
~bottom W11+5 L9+4 D7+4
~bow W8+7
~box W3-3 W4+8
~bra N5+3 B4+5 B7-3 B8+8 A2+4 D6+4
~breast N5-3 B1+8 B3+14 B5+3 B6-8 B8-3 B11-3 B13+4 B15+4
~breastbon B5-5 B6+7
~breath W3+5
~broad N1-5 N2-7 N3-8 N4-5 N5+6 N6-5 N7-5 N8-5 SH1-6 SH2-6 SH4+10 SH5-5 SH6-5 SH7-5 SH8-5 B1-7 B2-5 B3-6 B4-4 B5-4 B6-5 B7-4 B8-4 B9-7 B10+4 B12-5 B13-5 B14-4 B15-5 A1-5 A2-4 A3-5 A4+4 A5-4 K1+7 K2-4 K3-6 K4-5 K5-5 K6-5 K7-5 W1-4 W2-4 W3-6 W4-5 W5-4 W6-4 W7-4 W8-4 W9-5 W10-4 W11-4 W12-4 L1-4 L2-4 L3-6 L4-4 L5-4 D3-4 L6-4 L7-4 L8-5 L9-4 D1-4 D2-5 D4-4 D5-5 D6-5 D7-5 D8-4 X1-4 X2-7 X3-6 X4-4
~bubbl B4-3 B7+4 W2-4 W12+8
~buckl B9+5 A5-4 L1-9 L2+12 L4-5 L6-12 L7-5 D5-7
~buffalo K7+5
~bulg B4-3 B7-4 W6-6 W8+6 W12+10
~bulk N4+5 A1-3 A2-3 A5-6 D4+10
~bum B2-3 B7-3 B14-3 K2+5 K6-4 W6-7 W7+8 W9+11 W11-3 W12+3
~bump N2-4 N3-4 B1-4 B4-3 K7+9 W2-4 W3-3 W10-5 W12+6 L3-3 X2-3
~bunch N3-4 N4+3 SH5+8 SH8-3 A3-3 A4+4 A5+9 K7-4 D5-5
~bust B1+3 B3+9 B4+9 B5+6 B6+5 B7-6 B9+7 B10-3 B13+8 B14+9 B15+6
~bustlin N8-4 B1-5 B2-3 B3-5 B5+6 B14-3 A2-4 W2-4 W5-5
~butt W6-5 W7+5 W9+8
~butterf N2-3 SH1-4 SH8-3 B13-3 A2-4 A4-3 K6-3 D1+6 D4-4 X3-4
~button N2+9 N3-4 SH4-3 B8-4 B11-3 B12+17 W10-7 D6-4 X2-6
~buttonhol B8-5 B12+7
~calico X4+7
~cap L1+7 L2+13 L6+6 L9-6
~cas SH3-5 B1-3 A1-4 L3+6 D7-5 X2-5
~catch N7-3 B2-4 B4-4 B6-3 W1-3 W9+8 W10-4 W11-3 W12-3 D3-4 L8-5 D1-5 X1-4 X2-4 X3-4
~cav SH6-3 B1-5 B3+10 B5-3 B9-10 B10-5 B11-5 B15-3
~centr B6+6 W1-4 W2-6 W3-3 W4-4 L1+4 L9-7 X1+15
~chaf SH4-4 A1+5 A2-5 A5-4
~chang N1-4 N2-3 N3-4 N4-4 N5-4 N6-4 N7-4 N8-4 SH1-4 SH2-4 SH3-4 SH4-4 SH5-4 SH6-4 SH7-4 SH8-4 B1-4 B2-4 B3-4 B4-4 B5-4 B6-4 B7-4 B8-4 B9-4 B10-4 B11-4 B12-4 B13-3 B14-4 B15-4 A1-4 A2-4 A3-4 A4-4 A5-4 K1-4 K2-4 K3-4 K4-4 K5-4 K6-4 K7-4 W1-4 W2-4 W3-4 W4-4 W5-4 W6-4 W7-4 W8-4 W9-4 W10-4 W11-4 W12-4 L1-4 L2-4 L3-4 L4-4 L5-5 D3-5 L6-4 L7-4 L8-4 L9-4 D1-4 D2-4 D4-4 D5-4 D6-4 D7-4 D8-4 X1-4 X2-3 X3-3 X4+11
~chest B1+9 B3+9 B9+11 B10+5 B11+8 B15-6 X2-3 X3-3
~chok N2+11 N7+10 SH5-3 SH8-3 B2-4 B14-4 A1-4 A4-4 K1-4 K3-5 K5-5 K6-3 W5-4 W7-3 L4-4 D5-3 D7-3 X1-3
~circulation L3+5 L8-3 D7-4
~class D3+4
~climb N3-3 N8+7 B2+4 K3+5 K7-5 W1-4 W9+4 D3-3
~clo N1-4 N3+4 N4-5 N5-4 N6-5 N8-4 SH1-3 SH2-3 SH4+11 SH7-6 B2-4 B3-3 B4-6 B5-6 B6+11 B7-3 B8-4 B11-5 B13+5 B14-3 B15-4 A1-7 A2-4 A5-3 K1-5 K7-5 W1-4 W9-3 W12-3 L1-4 L3-4 L7-6 L8-3 D7-4 X2+4 X4-3
~cloth N3-4 N4+5 SH1+4 B9+6 B11-9 A2-5 A5+5 K2+5 W3-3 D4+10 X2-3 X4+11
~collap SH6-3 B1-5 B3+6 B9-4 B10-4 L1-4 L2+5 L6-4 D1-5
~collar N1+7 N2+5 N5+6
~collarbon SH3-3 SH6+4 B9+7 B10-5 B15-5
~collect A5-4 K2+5
~complet X1+4 X2+6
~con N5-3 SH7-6 B4+6 B5-5 B6-4 B7+3 B8-4 B12-3 B15-4 W8-3 W12-6 L2-3 L6-4 L7-3 D1-4 D6-3
~concav N2-3 B3-5 B9+5
~concertina B2-4 K3-3 W1-5 W2+5 W4-4
~contour B7-3 W12+6
~corkscrew L4+7 X1+6
~corner SH1-5 SH2-5 SH3-9 SH4-12 SH5-5 SH6-6 SH7+13 A1-6 A2-6 L7-4
~corset W4-3
~crawl N8+6
~crea SH2-4 B10-4 A5+12 L4+6 D4-5 D5-8
~creep N7+8 N8+6 SH5-8 K3+4 W9+4 D5-3
~crisp D8+4
~crook SH8+4 L8-3 D8-4
~crop SH4-3 B2-4 K3-4 W1+5 D3-3 X2-4 X3-4
~crosswi B13-4 B14+4 A4-3 K2+7 K4-4 W2-4
~crown SH3-3 SH8-4 L1+6 L2+8 L4-4 L6+3 L7+5 D1-6 D5-5 D6-3 D8-4
~crumpl B2-3 B14+4 A5+6 W2-3 W5-3
~crutch A1+4
~cuff B5-4 W1-5 L9+6 D7-3
~cup B3+5
~curtain B3-4 B13+4 A1-6 A2-5 A5-6 D4+6
~curv SH7+7 K5-3 K7+4 W8+8 X1-5
~cushion A5-4 K2-4 W2-7 W3-6 W4+6 D4-3
~cut SH4+4 D3+5 D2+5 X1+3
~danc D3+4
~dart B4+10 B5+14 B6+13 B7+10 W12+7
~daylight N1-4 N6+6
~deep SH7-3 B8-4 A2+6
~dent N3-3 N4-4 N5-4 N6-3 SH1-6 SH2-6 SH3-6 SH4-5 SH5-5 SH6-6 SH7+5 SH8-3 B1-3 B3-3 B4-5 B5-6 B6-6 B7+5 B10-3 B12-3 B13-3 B14-3 B15-4 A5-4 K2-3 K4-3 K5-3 K6-3 K7-4 W2-3 W3-3 W4-3 W5-3 W6-4 W7-4 W8-4 W9-3 W10-3 W11-3 W12-4 L1-10 L3-4 L4-5 L5-4 D3-4 L6-9 L7+12 L8-4 L9-4 D1-6 D2-5 D4-3 D5-5 D6-5 D7-4 D8-5 X1-3 X3-3 X4-3
~diagonal B11-5 B15+6 K1-5 K4+7 L1+5
~diamond B7-3 W12+6
~different X4+10
~dig N3-4 N8+4 SH2-4 SH4+3 A1+4 A5-4 W3+4 W4-3 L3-3 L8+5 D7+5
~dimpl N8-5 B4-3 B7+9 W12-7 L2-3
~dip N6-3 SH3-10 SH7+5 B14-3 A2-5 K3-5 K6-7 W5+5 W11+4 L9+6 D6-5 D7-5 D8-6
~disappear K6-4 W1-7 W2-7 W3-8 W4+8 W5-5 W12-3
~distanc B4-5 B5-5 B6+11 B7-8 B11-5 W12-3 X2-5 X3-6
~dolman W11-4 D1+4 D2+4 D5+7 D8+5
~dowager K7+8
~draft N1-4 N2-4 N3-4 N4-4 N5-5 N6-5 N7-5 N8-5 SH1+5 SH2+6 SH3-6 SH4-5 SH5-6 SH6-5 SH7-4 SH8-6 B1-8 B2-5 B3+4 B4-6 B5+5 B6-6 B7-4 B8-4 B9-5 B10-4 B11-5 B12-5 B13-5 B14-6 B15-6 A1-4 A2-6 A3-4 A4-4 A5-4 K1-4 K2-5 K3-4 K4-5 K5-5 K6-4 K7-4 W1-4 W2-6 W3-4 W4-4 W5-6 W6-4 W7-4 W8-5 W9-4 W10-5 W11-5 W12-5 L1-5 L2-4 L3-4 L4-4 L5-5 D3-4 L6-4 L7-4 L8-4 L9-5 D1-5 D2-4 D4-4 D5-4 D6-4 D7-5 D8-4 X1-5 X2-5 X3-4 X4-4
~drag N7+7 SH8+3 K4+4 L3-3 D2+6
~drap N7-3 N8-6 A2-4 A3-3 K5-4 W4-3 L4-3 L9-7 D2+3 D4+6 D5+19 D8+3 X3-4
~dress N2-5 N5-4 N8-4 SH4-3 B4-3 B7-3 B15-4 A5-3 K3-4 W2-8 W3-4 W4-4 W7-4 W9+12 L4-4 D3+5 L8-4 D1-4 X1+7
~drift N5-4 N7-10 N8-9 SH3-4 SH5+7 SH6-3 B2-4 W5-3 W6+8 W7+8 W8-5 D5-4 X1+5
~droop N3-4 SH8+6 B1-3 B3+5 K5+3 W2-3 L1-4 L2+4 L6-3
~drop N7+4 SH1+6 SH3+5 SH7-4 SH8+6 B3-5 B14-7 A2-4 K5-5 W5+6 W11+3 L9-4 D8+8 X1-4
~drown N1-5 N3-3 N4-3 N8-4 SH1-5 B3-7 B8-7 B9-4 B10-3 B13-7 B14-4 A3-4 A4-6 K2-4 K5-3 K6-4 W4-7 L2-5 D4-4 X3+11 X4-5
~ear SH6+3 A5-4
~eas N2-3 SH4-3 SH5-3 B8-3 B11-3 K1-3 L1-10 L2-8 L3-4 L4-4 L5-8 L6+15 L7+7 L8-3 L9-4 D1-4 D2-3 D5-3 D6-3 D7-4 D8-3 X2-4
~edg B8+10 A3+3 W11+7 L9+5 D6-5 D7+11 D8+4
~elastic W1+10 W2-9 W3-5 W4-6
~elbow N2-4 SH2-4 SH3+5 SH4-3 SH8-3 B1-4 B4-5 B5-5 B6-5 B7-3 B11-4 B15-3 A1-4 K1-5 K4-3 W3-5 W9-4 L1-3 L3-7 L4-5 L6-3 L7-4 L8+27 D1-3 D2-3 D7-4 X2-6
~empir N1-4 N6-3 B5-5 B8-5 B12-4 B13+5 B14-5 A3-4 K6-4 W1+5 W2-4 W3-4 W4-6
~empt SH1+4 SH2-5 SH3-4 SH5-3 B3+11 B4-6 B5-7 B6-7 D1-3 X3-4
~end SH1+11 SH2+7 SH3+3 SH4-3 B6-5 B7+9 W12+3 L9+4 D7+3
~enormou N5-5 B3-3 B6-5 B10-4 B13-4 A2-4 A4-3 W4-5 X3+7
~erect N1-4 N2-4 N3-5 N4-4 N5-4 N6-4 N7-5 N8-4 SH1-4 SH2-4 SH3-4 SH4-4 SH5-4 SH6-7 SH7-4 SH8-4 B1-4 B2-4 B3-4 B4-4 B5-4 B6-4 B7-4 B8-4 B9-4 B10-4 B11-4 B12-4 B13-4 B14-4 B15-4 A1-4 A2-4 A3-4 A4-5 A5-4 K1-5 K2-5 K3-6 K4-4 K5+12 K6-5 K7-4 W1-4 W2-4 W3-4 W4-4 W5-4 W6-4 W7-4 W8-4 W9-4 W10-4 W11-4 W12-4 L1-4 L2-4 L3-4 L4-4 L5-4 D3-4 L6-4 L7-4 L8-4 L9-4 D1-4 D2-4 D4-4 D5-4 D6-4 D7-4 D8-4 X1-4 X2-4 X3-4 X4-4
~everyth N7-4 D6+3 X1+6 X2+8 X3+4
~everywher N2-3 B2-4 B10-6 B11-3 B13-3 B14-6 A4-4 K3-3 K6-4 L3-3 D3-3 D5-6 X1-4 X2+11 X3+13
~excess N1+4 N5-4 B6-3 B9+5 A2-6 W1-5 D4+5
~extra SH1+5 B2-4 B3+6 B9+5 B13+3 B14+5 L2+4 D4-4
~fabric N3-4 N4+7 B9+4 B10-3 B15-3 A1-5 A2-11 K7-4 D4+12 X4+10
~fac N3+3
~fall N1+8 N3-5 N5-3 N6-6 SH3+10 SH4-4 B2-3 W4-4 W6-3 W7-3 L1-5 L2-4 L4-4 L6-3 D1-4 D5+6 D6-3 D8-3
~fashion X4+5
~fat N3-5 K7+4 L3+4
~fill B3+4 L1-3 L7+5
~fin SH1-5 SH8-5 A2-3 L1-3 L2-3 L4-3 L6-3 L9-4 D1+8 D4-5 D5-3 D6-3 D7-4 D8-4 X4-4
~final SH8-3 A5-3 X4+11
~finger N3+5
~finish B4+4 B5-4 B7-4 X4+5
~flap B8+5 A3+3
~flar D1+6
~flat SH5-4 SH6-3 SH7-4 B1-5 A1-4 A2-5 A3+8 A4-4 K1-3 K3-3 K5+11 W4-4 L1+4 L2+5 L3-4 L4-6 L6-5 L7-4 L9-3 D1-5 D5-3 D6-4 D7-3
~flatten N1-5 N2-5 N3-5 N4-5 N5-5 N6-5 N7-5 N8-6 SH1-5 SH2-6 SH3-5 SH4-5 SH5-5 SH6-5 SH7-6 SH8-6 B1+12 B2-5 B3-5 B4-5 B5-5 B6-5 B7-9 B8-5 B9-5 B10-5 B11-5 B12-5 B13-6 B14-6 B15-5 A1-5 A2-6 A3-9 A4-5 A5-5 K1-5 K2-6 K3-5 K4-5 K5-9 K6-5 K7-5 W1-5 W2-6 W3-5 W4-6 W5-5 W6-5 W7-5 W8-5 W9-5 W10-5 W11-5 W12-5 L1-10 L2-9 L3-5 L4-5 L5-5 D3-5 L6-4 L7-5 L8-5 L9-5 D1-5 D2-5 D4-5 D5-5 D6-5 D7-5 D8-5 X1-5 X2-5 X3-6 X4-5
~flex A1-4 L3+7 L5-5 D3-5 L8-7 D4-3
~fli D1+6 D5-3
~float SH1+4 D1+5 D5+7 D8+3
~flop N1+6 N3+5 N8-4 B13+4 W4+4
~flut L9-4 D6-4 D7-4 D8+8
~flutter N7-4 SH2-3 D2+5 D4+3 D5+4
~fly N1-3 N2-4 N3-3 N4-3 N5-3 N6-3 N7-3 N8-3 SH1-6 SH2-3 SH4-3 SH5-3 SH6-3 SH8-5 B1-4 B2-3 B3-3 B4-3 B5-3 B6-4 B7-4 B8-4 B9-4 B10-3 B11-3 B12+3 B13-3 B14-4 B15-4 A1-3 A2-4 A3-3 A4-3 A5-3 K1-4 K2-3 K3-3 K4-4 K5-3 K6-3 K7-3 W1-3 W2-4 W3-4 W4-3 W5-4 W6-3 W7-3 W8-3 W9-4 W10-4 W11-3 W12-4 L1-4 L2-5 L3-4 L4-4 L5-4 D3-3 L6-3 L7-3 L8-4 L9-3 D2-3 D4+8 D5-3 D6-4 D7-3 D8-3 X1-3 X2-4 X3-3 X4-5
~fold SH8+4 B1-3 B3+4 K2+3 K5+3 W2+4 L6-5 D5+7
~forward N2-4 N7+5 N8+14 SH3-6 SH4-4 SH5+14 SH6+6 SH8-3 B1-4 K1+9 K3-5 W6+5 W7-4 W8+3 D5-5
~fril L9-4 D7-4 D8+8
~from SH3-3 SH4+3 B3-5 B13+4 B15+4 W3-3 D2+3
~front N1+3 N8+5 SH6+7 B2+12 B8+6 B10+7 B11+7 B14+4 A5+13 W5+8 W6+5 W10+4 D5+4
~full N4-4 SH8-4 B2-5 B5+6 A5-6 K3-4 W1-4 L1-4 L2-3 L4-6 L9-3 D5+6 X2-4
~fullest B2-3 B3+5 B4+5 B5-6 B6-5 B7-3 B10-4 B11-4 A5-3
~further SH4-5 SH5+5 SH6-5 B3-4
~gabl B1-3 B7-3 A3-4 K5-4 L1-8 L2+7 L3-5 L4-6 L6-4 L8-3 L9-3 D1-5 D5-3 D6-5 D8-4
~gag N1-4 N2+13 N4-3 N6-3 N7-8 N8-3 SH2-3 SH3-3 SH5-3 SH6-5 SH8-4 B2-7 B4-3 B5-3 B7-3 B8-4 B9-3 B10-4 B11-4 B12-3 B14-7 A1-5 A2-3 A3-3 A4-4 A5-5 K5-3 K6-4 W3-3 W5-4 W6-5 W10-5 L3-3 L4-5 L6-3 L7-3 L9-4 D1-4 D5-4 D7-4 X1-4 X3-3 X4-3
~gap B8+9 B12+9 B13+7 A1-5 A3+4 D1-9
~gaposi N1+7 N2-4 N6-6
~garment N7+9 N8+9 SH5-5 SH6-8 K1-8 K3-5 K4-4 W6-6 W7-4 W8-5 L4-8 D5-5 X1+9 X2+5 X3+5
~gather B7-4 A1-4 K2+6 L1-4 L2-10 L5-5 L6+9 L7+5 D4+3 D5+4 D8-3
~girl B1+10 B2-3 B3+6 B5-4 B6-5 B15-4 X2-3 X3-4
~grain N1-3 N2-4 N3-3 N4-3 N6-3 N7-3 SH2-3 SH4-3 SH7-4 SH8-4 B1-3 B2-4 B3-3 B7-3 B8-3 B9-3 B10-3 B11-3 B12-3 B13-3 B14-3 B15-3 A1-4 A3-3 A4-3 A5-3 K1-3 K3-3 K4-3 K7-3 W3-4 W5-4 W6-5 W7-4 W8-4 W9-3 W10-3 W11-4 W12-3 L4-13 L8-3 L9-5 D2-3 D4-3 D5-3 D7-3 D8-6 X1+13 X4-3
~grip N1-6 N2+7 SH2+5 SH3-3 SH4-4 K1-4 W3+3 W4-3 L1-4 L3+9 L4-4 L5-3 D1-4 D2-4 D6-4 X2-3
~grow B3-3 W4-4 L2-5 L4-3 D3+4 L6-4 L9-6 D1-4 D2-3 D5-4 D6-11 D7-6 D8+8 X3-7
~gut W10+8
~hairlin N8+3 K7-3
~hand D3+5
~hang N2-3 SH3+7 SH6-3 B3-3 A2+5 L4+6 L9-5 D8+3
~hanger SH2+4
~hard N2+7 N7-3 SH3-4 SH8-5 A1-3 K1-3 W9-3 L4-3 L5-4 D3-4
~haul D3+4
~headlight N1-3 N2-3 N3-3 N4-3 N7-3 SH7-6 B1-3 B2-3 B4+8 B5-3 B6-3 B7-6 B9-3 B10-3 B11-3 B12-3 B13-3 B14-3 B15-4 A4-3 A5-3 K2-3 K3-3 K5-3 K7-3 W3-3 W5-3 W7-3 W8-4 W11-3 W12-4 L2-4 L3-3 L5-3 D3-3 L6-4 L7-4 L8-3 D4-3 D5-3 D8-4 X1-3 X3-3
~heap K2+3
~hear K1+4
~helicopter L1-3 L3-3 L4-4 D1+6 D6-3
~hem K2-5 K3+5 W9+3 W10+5 W11+7 L9+7 D7+5 D8+13
~hemlin K3-4 W11+10
~high N1-4 SH8+6 B1-5 B2+7 B4-3 B5+8 B6-3 B15-4 A1+5 A2-4 A4-3 K1-4 K2-6 K3+9 K5-3 K6-6 W1+4 W2+3 W3-4 W4-4 W5-5 W9-3 W10-4 L6-3 L7-3 L9+3
~hik N7-4 N8-3 B2+7 K3+6 K6-4 W1-4 W9-5 W10-9 D3-5
~hip W2+5 W4-4 W9+14 X2-3
~hit W2+4 W5-3
~hitch SH3-5 SH4-8 L1+8 D1-4
~hoist B1-4 B2+3
~hold N1+4 N2-5 L3-5 L8+3
~hollow N1-4 N3-3 N4-3 N6-3 SH1-5 SH2-3 SH3-3 SH5+6 SH6-5 SH7-3 SH8-4 B1-4 B3-10 B5-3 B6-4 B8-5 B9+10 B10-7 B11-6 B12-3 B14-4 B15-3 A1-3 A2-3 A4-5 A5-7 K2+4 K5-4 K6-4 W5-4 W6-3 W8-3 L1-4 L2-6 L3-5 L4-5 L5-4 D3-4 L6-5 L7-3 L8-3 L9-3 D1+6 D2-4 D4-5 D5-5 D6-4 D7-3 D8-3 X4-3
~hood N3+4
~horizontal B3-3 B8-5 B14+3 A4-4 L2-4 L9-4 D1+8 D6-3 D7-5 D8-5
~hug N1-4 N2-3 N5+4 B3-4 B8-4 B10-5 B13-3 A2+5 K1+5 K7-4 W4-5 L6-3 L7-3 X3+4
~hulk K1+4 K3-3
~hump N1-6 N2-4 N3-8 N4-4 N5-4 N8-4 K7+19
~hunch SH5+3
~hurt SH4-4 A1+8 D2+5
~impossibl K1+5
~incredibl K1+4 K3-3
~inner L9+7
~insid SH1-3 SH2-6 SH3-8 SH4+8 SH5-4 SH7-5 L1-5 L2-3 L3-4 L4-8 L6-3 L9+9 D1-4 D6+9 D8-3
~jog SH7+4
~join L6-4 L7+5
~joint SH1-4 SH2-7 SH3-3 SH5+5 SH6-6 SH7-3 A1-4 A5+5 W6-4 L3-4 D7-4
~jump D3+4
~jut B2-3 W10+8 W12-4 D1+8
~keep N5+7 N8-6 SH8-6 B2+4 W10-5
~kick N7-4 N8-4 B2-5 B14-6 W1-4 W5-3 W9-4 W10+15 D3-4
~kimono W11-4 D3+3 D1+3 D8+4
~kink SH4-3 SH7+8 A1-4 A2-4 L7-5
~label N1-4 N3+4
~lack N2-6 N3-3 N7-4 N8-3 SH2-4 SH3-6 SH7-3 B1-5 B2+6 B4-4 B9-4 B11-5 B13-3 B14-8 A1-5 K1-7 K3+6 K4-3 K5-8 W1+9 W2-11 W3-5 W5-3 W9-4 W10-4 W11-3 L1+10 L2-9 L3-8 L4-3 L6-6 L7-14 L8-4 L9-3 D1-4 D2-4 D5-3 D6-3 D7-9 D8-3 X2-11 X4-4
~land K3-5
~larg N1-4 N5-6 N7-3 N8-3 SH1-3 SH3-3 SH7-3 B2-5 B3-6 B6-4 B8-3 B10+5 B13-6 B14-4 A3-4 A4+5 K1-7 K3-4 K5-5 K6-5 W4-7 L6-5 L7-3 D4-3 D5-3 D6-5 D8-4 X1-3 X3+8
~lean N1+6 N2-5 N3-3 N6-4 N7-4 N8-4 SH2-3 SH3-5 SH4-4 SH5-8 SH6+5 SH7-4 SH8-3 B2-5 K1-4 K3-4 W3-3 W5-7 W6+8 W7+7 W8-7 W11-6 L4-4 L6-3 L7-4 L9-4 D5-3 X1+3
~length N2-5 SH2-3 SH4+5 B1-4 B2+4 B5-3 B9+6 B14+6 A4-5 A5-4 K1-5 K2+4 K3+4 K4-3 K5+7 K6-3 W1+7 W5-4 W11-3 L1-4 L9-3 X1-3 X2-4
~lengthwa SH5-5 B10+9 A4+5 A5-7 K2-5 K6+4 W2-5 W4+5 D5-3
~lengthwi B10+5 A3-4 A4+6 K2-7 K5-4 K6+6
~let N5-4 B2-4 B6-5 K4-3 K6-5 W1-8 W2-9 W3+13 W4-12 W5-4 W10-3 X1-5
~lettuc L9-4 D7-4 D8+8
~lie N3+4 SH1-6 SH2-6 SH3+4 SH4-5 SH5+4 SH6+6 SH7-4 SH8-3 B1-3 B4-4 B5-4 K5-4 K7-4 L3-3
~lift B2+3 A2-4 K3+4 L5+4 D3+9 L9-5 D6+4
~lin SH6+4 SH8+5 B1+5 B11+5 B14-4 K4+5 L4+5
~linebacker SH3+3
~lingeri N1-3 N5+7
~load A2-3 A5-3 W4+4 D4+8
~long B4+4 B5-4 B14+4 K2-3 K5+4 W1+8 W2+11 W5-4 L1-3 L4-3 L9+4
~loo N8+4 SH1+3 A3+4
~loop N1+5 B8+4 A3+5
~lopsid N5-3 SH2-3 SH3-5 SH4-5 SH7-4 SH8+9 B15-3 W8-4 W11+3 L9+4 D5-4 D8-6 X1-7
~lordosi K2+9 K5-7
~low N1-5 N8+4 SH8+8 B4-4 B5+9 A1-4 A2+8 K6+5 W5+7 W12+4 L1+3
~lump N2-3 N3-7 N4-8 N8-3 SH5-3 SH6-3 SH8-3 B4-4 B5-6 B6-4 B7+10 B8-3 B10-4 B14-4 A5+11 K2-4 K7+11 D4-4 D5-5
~lunchtim N5-4 N7+6 SH3-4 SH5-5
~madonna N5-3 SH7-5 B4+7 B7-6 B8-4 B12-3 B15-4 A2-3 W8-3 W12-4 L2-4 L6-4 L7-3 D6-3 D8-3
~magyar L4-4 L5-5 D3+6 D1-5 D2-4 D5-5 D6-5
~material X4+4
~maternit B3-4 B13+4
~meet SH7+6 B9-5 B10-4 A5+5 D4-3
~middl N1-4 N3-3 N8-3 SH1-3 SH4-4 SH5-4 SH8-3 B1-3 B3-3 B4-5 B5-9 B6+10 B7-6 B8-4 B10-3 B13-3 B14-4 A1-3 A2-3 A4-3 A5-3 K1-3 K2-4 K3-4 W1+8 W2+12 W3+12 W4+14 W5+7 L1-4 L3-3 L8-4 X1-4 X2-4 X3-8
~midriff SH1-3 B3-3 B8-3 B13+14 B14-10 A4-3 W4-4 X3-7
~miniatur N2-5 N5-4 SH4-4 B1-5 B2-3 B6-5 B11-4 A1-5 K1-4 K4-3 W3-7 W9-3 W10-4 L1-3 L3-3 D7-4 X2+7 X4-3
~miss B4-5 B5-9 B6+5 K6+3 W4-4
~mock X4+9
~mov N5-3 N7+3 N8-3 SH5-4 B6+5 W6+5 W8-4
~muffin SH7-3 K2-3 W1-9 W2-6 W3+8 W4-6 D2-3
~muscular L3+7 L4-5 D1-4
~muslin X4+11
~nap N3+6 N4-3 N8-5 K7+10
~narrow N1-3 N2-4 N3-3 N4-3 N5-4 N6-3 N7-4 N8-3 SH1-4 SH2-5 SH3+9 SH4+5 SH5-4 SH6-4 SH7-4 SH8-4 B2-4 B3-7 B4-4 B5-4 B6+6 B7-3 B8-4 B9-6 B11+10 B12-4 B13-4 B14-3 B15-5 A1-4 A2-3 A3-3 A4+5 A5-6 K1+8 K2-4 K3-5 K4-4 K5-4 K6-4 K7-3 W1-3 W2-3 W3-4 W4-4 W5-3 W6-3 W7-3 W8-3 W9-3 W10-4 W11-3 W12-3 L1-4 L2-4 L4-4 L5-3 D3-3 L6-3 L7-3 L8-4 L9-4 D1-4 D2-4 D4-4 D5-4 D6-4 D7+3 D8-5 X1-3 X2+4 X3-5 X4-4
~natural N4-3 SH6-3 SH7-3 B2-4 B5-3 A2-5 K2-5 K6-5 K7-3 W1+12 W3-14 W4-11 W5-5 W10-3 W12-7 L2-3 D2-4 D4-4
~neck N1+6 N2+11 N3+4 N4+4 N5+6 N6+7 N8+4 B11-5 B15+8 K7+5
~necklin N1+12 N3+5 N5+6 N6-3 K7-4
~need N7-4 SH2-3 SH3-5 SH4-4 SH5+7 SH6+5 SH7-3 B2-3 B3+3 B5+7 B6-5 A5+3 K3-3 W3+8 W4-4 W5-5 W12-3 L1+12 L2-12 L6-10 L7-6 D1-3
~nick SH7+5
~nip B1-4 B6-3 W1-3 W3-5 W4+6
~nippl B4-8 B15+4
~noo N2+8 N7-6 SH2-3 SH3-4 SH8-4 B13-3 B14-3 A1-4 A2-3 A4-4 K5-4 K6-4 W4-3 W6-3 L4-4 L9-3 D1-3 D7-4 X1-3 X3-3
~obliqu B1-4 B11-3 B15+4 A5+3 K4+8
~open N2+4 N5+4 SH3-4 SH7+4 B12+9 A2-3 A5-4 L3-6 L7+4 D1-4 D2-4 D4-3 D6+10 D7+7 D8-3
~otherwi SH1+5 D4-4
~outer N6-5 SH1+8 SH2+8 SH3-6 SH4-7 SH7-4 D1-4 D2-5
~outsid B4-4 B5-5 B6+8 L9+4
~outward B6+6
~overall N5-4 SH3-3 SH4-4 B1-3 B6-5 B10-4 B11-5 A4-4 K1-4 W3-3 W4-4 L3-4 D5-3 D6-3 D7-4 X1-4 X2+9 X3+10
~overarm N2-3 N4-5 N7-5 SH2-3 SH3-3 SH4-6 SH5-5 SH6-3 SH8-3 B1-4 B2-4 B7-3 B11-4 B12-3 B15-3 A1-3 A4-3 A5-4 K1-4 K2-3 K3-5 K4-3 W1-6 W3-4 W6-3 W7-5 W9-3 W10-3 L1-8 L2-6 L3-9 L4-7 D3-3 L6-5 L7-6 L8-6 L9-7 D1-3 D2+17 D4-3 D5+7 D6-4 D7-8 D8-4 X2-5 X4-3
~overhang N6-7 SH1-4 SH2-5 SH3+14 SH4-8 SH5-11 SH6-13 SH7-7
~overhead L3-3 L5+3 D3+4
~overlong SH3+4 B2-5 B4+5 B5-5 B14+7 K2-4 K3-4 K5+7 W1-5 W2+5 W5-3 W11-3 W12-3
~overnight W11+4 D8-3
~overshoot B4+6 B5-4 B6-9
~oversiz B3-3 B10-3 B13-3 A2-4 W1-4 W2-4 W4-4 D5-3 X3+6
~pad N3-5 SH1+9 SH2-3 SH8-4 K7+4 D4-4
~pagoda L3-3 L4-4 D1+5 D6-3
~parallel W11+5 D8-4
~part D8+5
~peak SH1-6 SH2-5 SH3-5 SH4-4 SH5-3 SH7+9
~peek D6+4
~perfect X4+8
~pil N4+4 N7-4 A4-4
~pimpl B7+8
~pin N5-4 SH8-3 B5-3 B6-4 B8+3 B10-4 A5-3 W8-5 L5+6 D3+7 D4-3 D6-4
~pinch SH1+6 SH2-3 SH3-3 B3-4 K2-4
~pit SH1-4 A1+8 A2-6 A5+7 L4-6 L7-4 L9-3 D5-7
~pitch L4+13 L9-3 D8-4 X1-10
~plac SH8-5 B2-9 B5-6 A1-4 K3-7 W1-5 W9-6 W10-4 W11+10 L2-4 D3-4 L9-6 D6-7 D7-5 D8+6 X3-5
~placket N1-4 N2-4 B8-6 B12+13 X2-3
~pleat SH5-6 SH8-3 A3-3 A4+6 A5-4 K6-4 W4-3 L1-5 L2-9 L4-6 L5-3 L6+9 L7-4 D4-4 D5-6 X3-3
~plumb W6+4 W7+4 W8-6
~pocket B1-4 B3+4 B4-4 B6-3 B7+9 W12-3
~point SH7+6 B1+3 B4+11 B5+6 B6+3
~pok SH3-4 SH4-3 SH7+8 B4+8 B5-6 B6-5 B7-4 B8-9 B11-3 A1-6 A2-6 A3-4 A5+4 K4+5 W12+7 L7-4
~pol L4-5 X1+4
~pooch W10+5
~poof L2+4
~pool B14+7 A5-6 K2+6
~pop N2-3 B1-4 B2+4 B11-3 B12+9 K1+3 W10-5
~postur N1-4 N2-4 N3-4 N4-4 N5-4 N6-4 N7-4 N8-4 SH1-4 SH2-4 SH3-4 SH4-4 SH5-3 SH6-6 SH7-4 SH8-4 B1-6 B2-4 B3-4 B4-4 B5-4 B6-4 B7-5 B8-4 B9-4 B10-4 B11-4 B12-4 B13-4 B14-4 B15-4 A1-4 A2-4 A3-6 A4-4 A5-4 K1-4 K2-4 K3-4 K4-4 K5+14 K6-4 K7-4 W1-4 W2-4 W3-4 W4-4 W5-4 W6-4 W7-4 W8-4 W9-4 W10-4 W11-4 W12-4 L1-6 L2-6 L3-4 L4-4 L5-4 D3-4 L6-3 L7-4 L8-4 L9-4 D1-4 D2-4 D4-4 D5-4 D6-4 D7-4 D8-4 X1-4 X2-4 X3-4 X4-4
~potato N1-4 SH1-4 B3-5 B8-5 B13-5 A4-4 W4-6 L2-3 X3+7
~pouch B7-5 B14+5 W12+8
~pout B4-4 B8+7 A2-6 W12+5
~practic X4+8
~pram K1+4
~pregnant N1-4 N2-3 N3-4 N4-4 N5-4 N6-4 N7-4 N8-4 SH1-4 SH2-4 SH3-4 SH4-4 SH5-4 SH6-4 SH7-4 SH8-4 B1-3 B2-3 B3-4 B4-4 B5-4 B6-4 B7-4 B8-4 B9-4 B10-4 B11-3 B12-4 B13-4 B14-3 B15-4 A1-3 A2-4 A3-4 A4-4 A5-3 K1-3 K2-3 K3-4 K4-3 K5-4 K6-4 K7-4 W1-4 W2-4 W3-4 W4-4 W5-4 W6-4 W7-3 W8-4 W9-3 W10+12 W11-3 W12-4 L1-4 L2-4 L3-3 L4-4 L5-4 D3-4 L6-4 L7-4 L8-3 L9-4 D1-4 D2-4 D4-4 D5-4 D6-4 D7-4 D8-4 X1-4 X2-3 X3-4 X4-4
~press B1-3 B7+5
~pressur A1+3
~prominent N1-3 N3-3 N4-3 N5-4 N6-4 SH1-5 SH2-4 SH3-5 SH4-5 SH5-5 SH6-4 SH7-4 SH8-5 B2-3 B3-3 B4-3 B5-3 B6-3 B7-3 B9-3 B10-3 B13-3 B14-3 B15-3 A3-3 A4-4 K1-4 K2-3 K3-3 K4+9 K5-5 K6-3 K7-3 W1-3 W2-3 W4-3 W5-3 W8-3 W11-3 W12-3 L1-3 L2-3 L4-3 L5-3 D3-3 L6-3 L9-3 D1-3 D4-3 D5-3 D6-3 D8-3 X1-3 X3-3 X4-3
~pucker SH7-4 B4-5 B5-4 B7+9 W12-3 L2-5 L6+7 L7+5 D5-3 D8-3 X2-5
~puddl A5-4 K2+4
~puff B4-3 B7+4 W12+4 L1-4 L2+12 L4-3 L7-4
~pull N8+4 SH4+4 SH5+4 B11+8 L1-4 L4-5
~push N2-3 N3-8 N4-5 N5-4 N8+6 SH1-5 SH2+5 SH3-3 SH4-5 K7+4 W1-3 L5-3 D3-4
~radiat N2+4 B1+9 B2-4 B15-8 K4-4
~rai B4-3 B5+4 A2+4
~reach B1-3 B3-3 B4+7 B5-9 B6-7 K1+4 L4-5
~rear N2-4 N3+3 A3+6 K3-4 W7+3 W9+9
~restrict B2-3 K1+3 K3-4 W9+4 L1-4 D3+5 L8-4 D2-7 D7-6 X2-4
~rex L3-4 L5+3 D3+7 D6-3
~rib N5-4 SH3-4 B4-4 B5+4 B6-4 B8-3 B10-5 B13+11 B14-7 A2+4 A4-5 W1+9 W2-5 W3-5 W4-6 W9-4 W12-3 D6-4 X3-4
~ribcag B3-4 B13+13 B14-7 A2-4 W1-3 W4-4 X3-11
~rid N3-6 N4-3 N7+5 B2+4 K3-6 K7+3 W1+7 W2-3 W9+10 W10-8 W11-6 L1-6 D3-11 L8+3
~ridg N2-4 N4+4 K7-5
~rip K1+4
~rippl N3-4 N4+3 SH7-4 B9+4 B11-4 B14+4 A1-4 A2-4 A3-4 K2+3 K3-4 K6-4 K7-4 W1-4 L1-4 L6+7 L7+7 L9-3 D7-3 D8+7
~ris B2+3 K3-4 W10+5 D3+7 L9+10
~roll N4+4 SH8+8 B10+5 A5-7 K2-3 K7-4 L2+5 D2-5 D4-3
~room B3+4 B8-3 B13+3 A4+5 K2-7 K5-4 K6+5 W1-4 W2-5 W4+8 W5-4 D7+3 X2+3 X3-6
~rotat L4+6 X1+5 X3-3
~round N4-4 K1-3 K3+12 K5-3
~rub B8-5 B11-6 A5+11
~rubber D7+5 D8-4
~ruck N4+6 N8-5 A5+5
~ruffl B7-3 L6-7 L7-5 L9-6 D5-3 D6-5 D7-6 D8+6
~run N7-6 N8-6 SH3-4 SH6+3 B6-4 B10+6 B13+4 A4+4 A5-3 K2-4 K6+5 W6+3 W8-4 X1+7
~s W6-5 W7-5 W8+12 L4-3 X1-4
~sack N1-4 SH1-4 B3-5 B8-5 B13-5 A4-4 X3+7 X4-3
~sag SH1+4 SH8+5 B14+4 A4-6
~sampl X4+6
~sausag N2-5 SH2-4 SH3-6 SH5-3 SH8-5 B1-5 B7-3 B8-3 B11-3 B12-3 B15-3 A1-5 A4-3 A5-6 K1-5 K2-4 K4-3 K7-4 W3-6 W9-4 W10-3 L3+5 L4-3 D3-3 L7-3 L8-5 D2-4 D4-5 D5-3 D7-7 X2+7 X4-3
~saw A1+4
~scant SH2-4 SH4+5 B1-8 B11+9 K1+6 K3-6 X2-7
~scoop N1+5 N2-5 N5-3 N6-6 B8-4 A5+6
~scratch N2-3 SH4-4 B2-4 B8-6 B10-4 B11-6 A1-10 A5+9 W10-3 L3-5 D7-5
~scrunch N3-5 N4+5 A5+4 K7-6
~scy SH3-3 SH7+7 B8+6 A3-3 L7+7
~seam N1-3 N6+4 SH3+11 SH4+5 SH5+5 SH6+12 A2-3 W6+7 W7+6 W8+7 L6+3 L7+4
~seat W9+6
~see N1+6 B8+4 A2-3 A3+3 A4-4 L3-5 L4-4 L9-4 D1-3 D6+15 D7-3 D8-3
~set L4-4 L6+5 L7-4 D5-3
~shallow L1+6 L2-6 L6-3
~shap B1-8 B5+4 B11-6 A2+5 K4+3 W8+6
~shelf K1-4 W10-3 L5+5 D3+7
~shift N5-4 N7+6 N8+7 SH5-4 W6-4 W7-4 D5-5
~shirt N5-6 N7+7 N8+11 SH2-4 SH3+5 SH4-5 SH5-10 SH6-4 SH7-3 A3-3 K1-5 W6-6 W7-4 W11-4 D3+3 D5-5
~shoot N8-3 B2+8 K3+5 W10-3 D3-3
~short SH3-3 SH4+6 SH6-4 B2+5 B4+3 B5-3 K3+4 W1+11 W2+5 W3-4 W4-5 L2-4 D3-3 L6-3 L8+4 D2+3 D6-3
~should N5-3 N6-3 N7-5 N8-7 SH3-3 SH4-5 SH6+6 SH7-4 B1-5 B4+11 B6-11 B7-6 B9-3 B13-4 B14-3 B15-3 A1-3 A2-4 A3-4 K2-3 K5-4 K6-4 K7-3 W1+4 W2-4 W3-4 W4-6 W5-3 W6-7 W7-4 W8-4 W12-5 L1-8 L2+6 L3-5 L4-6 L5-4 L6-5 L7-4 L8-3 L9-4 D1-5 D2-4 D5-4 D6-5 D7-3 X4-3
~shoulder SH1+12 SH2+13 SH3+14 SH4+12 SH5+12 SH6+7 SH7+4 SH8+14 B1-3 A2-3 A5-3 K4+5
~show N5+10 SH6+4 B8+9 A2+7 W10-7 D6+6
~shrink N2-6 N3-4 N7-3 SH2-4 SH4-5 SH7-4 B1-6 B2-3 B6-3 B11-5 B13-4 B15-3 A1-6 A5-3 K1-5 K4-3 W1-4 W3-6 W9-4 W10-4 W11-3 L1-5 L3-4 L5-3 D3-4 L7-4 L8-4 D7-5 X3-4 X4+10
~shut N1+5 N2-4
~sid SH8+9 W6+10 W7+8 W8+11
~sidewa N5+6 B4-3 B5-6 B6+5 B9+3
~silk X4+7
~sit N2+9 N5+3 SH3-4 SH7-5 B9+3 W1+5 W2+3 W4-5 W12-4
~skew SH8-5 W5-3 W8-5 W11-6 L4-4 L9-6 D5-4 D8-3 X1+11 X2-4 X3-4
~skimp SH2-4 SH4+6 SH7-3 B1-8 B11+9 K1+6 K3-6 X2-7
~skin B8+4
~skirt N8-4 B2-4 W9+7 X1-4
~slack N3+3 SH1+4 B13+6 A3+4 W4+3 L2+4 D4-3
~slant W11+3
~slantwi B11-5 B15+5 A2+4 K1-4 K4+4
~sleev L1+6 L2+6 L3+3 L4+8 L6+6 L7+3 L9+6 D1+8 D5+5 D6+8 D7+6 D8+6
~sleevehead L1+10 L2+8 L6+6 L7+5 D1-6 D8-4
~sleeveless N1-4 SH5-4 B12-4 A3+5
~slid N5+9 N7+6 N8+5 SH5-5 SH8-3 W7-3 W9+4 D5+4
~slip N5+10 N7+7 N8+4 SH3-10 SH4-5 SH5-6 SH6+4 SH7-3 W7-4 D5-5
~slop N1-4 N2-4 N3-4 N4-4 N5-5 N6-6 N7-5 N8-5 SH1+14 SH2+13 SH3-8 SH4-7 SH5-9 SH6-10 SH7-6 SH8-11 B1-4 B2-5 B3-4 B4-4 B5-4 B6-4 B7-5 B8-5 B9-4 B10-4 B11-5 B12-5 B13-5 B14-5 B15-5 A1-4 A2-5 A3-4 A4-4 A5-4 K1-5 K2-4 K3-5 K4-6 K5-4 K6-5 K7-4 W1-5 W2-5 W3-5 W4-7 W5+6 W6-5 W7-5 W8-5 W9-5 W10-4 W11-4 W12-5 L1-5 L2-4 L3-4 L4-5 L5-4 D3-4 L6-4 L7-4 L8-4 L9-5 D1-5 D2-5 D4-4 D5-5 D6-4 D7-4 D8-4 X1-7 X2-5 X3-5 X4-4
~slump N7-4 N8-7 SH1-3 SH2-3 SH3-7 SH5+7 SH6-3 SH7-3 SH8-6 B4-3 B5-5 B9-4 B13-7 B14+8 A2-5 K1-4 K3-4 K5-5 W2-4 W5-7 W11-6 D4-3 D8-4
~small N2-3 SH3+4 SH4-4 SH7-5 B3+8 A1+6 K2+6 K6-6 L1-6 D2-3 D7+4 X2+13 X3-5
~smooth SH4-3 SH7+5 B4-5 B5-6 B6-5 B7+11 L7-3
~snak W8+9
~snap N1-3 B1-3 B8-5 B12+11
~snug A1+3 K1+4 K2-4 K5-3 W3+5 W10+3 D2-3 X2+8
~soldier K5+4
~sooner B4+10 B5-5 B6-9
~span B1-14 B2-4 B3-12 B4-5 B5-5 B6+14 B12-4 B13-4 B15-7 W8-4 X2-3
~spar B1-3 B3+4 B10-4 B13+5 B14-4 K6-4 W4+3 D4-5
~spik SH1-7 SH2-5 SH3-7 SH4-6 SH5-3 SH7+9 B4-5 B7-4
~spin N2-3 N3-5 N4-4 N8-4 SH7-4 SH8-3 K7+10 W5-3 W8-5 W11-3 W12-4 L6-3 L7-3 X1-4
~spiral SH4-3 SH5-4 SH6-3 A1-3 W6-3 L4+8 L6-3 L7-3 D8-4 X1+5 X3-3
~split N7-3 A4-3 K1+8 K3-4 W9+4
~spread B12+9
~squash B1+12 B3-10 B5-3 B6-5 B11-6 B12-3 B15-5 L3-3 X2-3
~squeez N2+4 B1+7 B3-5 B11-5 B15-3 W3+5 W10-5 L3+6 L7-4 D2-4
~squirrel N1-3 N3-3 N4-3 N6-3 N7-3 N8-3 SH1-5 SH2-3 SH5-3 SH6-3 SH8-5 B1-3 B2-3 B3-3 B4-3 B5-3 B6-3 B7-3 B9-3 B10-3 B11-3 B12-4 B13-3 B14-3 B15-3 A2-4 A3-3 A4-3 A5-3 K1-3 K2-3 K3-3 K4-3 K5-3 K6-3 K7-3 W1-3 W2-3 W3-3 W4-3 W5-3 W6-3 W7-3 W8-3 W9-3 W10-3 W11-3 W12-3 L5-3 D3-3 D1-9 D4+8 D7-3 D8-3 X1-3 X2-3 X4-5
~squish B1+4
~stack B2-4 K3-3 W1-5 W2+5 W4-4
~stand SH1+4 B3+6 B5-3 B6-6 B8+6 B12-3 W4+6 D1+7
~start N1-3 N5+5 SH1-4 SH2+3 SH3+7 SH4-5 K1-5 K4+4 L1-6 L3-5 L4-4 L5-3 D1-3 D2-4
~steep SH1-9 SH2+7
~steer K1+3
~stick N1-3 SH2-3 SH4-5 SH7+4 A2-3 K4+4 W2-3 L1-4 L6-3 L8+5 D1+10
~stitch K1+4
~stomach W3-3 W10+9
~stoop N5-4 SH3-7 SH4-6 SH5-5 SH7-4 A4-4 K1-5 K3+12 K5-4
~stop SH3-6 SH4+7 SH5-4 SH6-5 B4+9 B5-4 B6-8 W1-4 L3-4 L5+16 D3-16 D6-3
~straight SH2+8 SH5-3 SH8-4 B1-3 B2-3 B3-6 K5+8 W4-4 W5-3 W7-3 W8+5 W9-4 L1-4 L2-4 L4-4 L6-3 L9+4 D1+5 D5-5 D8-7 X1+5
~strain N4-4 SH2+5 B6-4 B11+3 B12+7 K4+3 W3+4 W8-4 L8+3 D2+3 D8-5 X2+6
~straitjacket B11-5 A1-3 K1+6 W3-3 L3-5 L8-3 X2-4
~strangl N1-4 N2+11 N3-4 N4-4 N5-5 N6-4 N8-3 SH1-4 SH2-3 SH3-4 SH4-4 SH5-3 SH6-4 SH7-5 SH8-4 B2-4 B5-4 B7-3 B8-3 B9-3 B10-3 B11-3 B13-3 B14-4 A1+7 A2-3 A3-3 A4-6 A5-4 K2-3 K5-3 K6-4 K7-4 W1-4 W6-3 W9-3 W10-3 L1-3 L2-4 L3-5 L4-6 L5-4 D3-5 L7-3 L8-3 L9-6 D1-5 D2-5 D4-4 D6-3 D7+4 D8-4 X4-3
~strap N1-5 N2-4 N3-3 N5+14 N6-3 SH6-4 B2-5 B6-3 B8-5 B10-4 B11+6 B12-3 B14-4 A2-4 A5-4 W5-3 D1-3 D5-3 D6-6
~stretch SH2-3 B1+7 K1+6 W3+6 L3+4 D3+4 L9-6 D7-11 D8+13
~stud B1-3 B12+3
~stuff N2-3 N4-5 SH2-4 SH8-3 B1-3 A1-3 A5-5 K1-4 K2-3 W3-5 W9-3 L8-4 D2-3 D4-4 D7-5 X2+7
~surplu N1+6 N5-5 SH1-4 SH4-3 B13-4 A4-4 K5+6 L2+5 D4-4
~swa K2+9 K3-5 K6-5
~swag A4-4 K5+3
~swallow N2+7 N7-3 SH3-4 SH8-5 A1-3 K1-3 W9-3 L4-3 L5-4 D3-4
~swamp N1-5 N3-4 N5-3 N8-4 SH1-5 SH8-3 B3-7 B6-3 B8-7 B9-3 B10-4 B13-8 B14-4 A2-4 A3-4 A4-6 K2-4 K5-3 K6-4 W4-7 W5-3 L2-5 D5-3 D6-3 X1-3 X3+10 X4-4
~swayback B2-3 K2+9 K3-3 K6-5 W11-3 L9-3
~swim B3-3 B8-3 B13-4 W4+3 X3+7
~swimmer SH3-4 SH4+6 B6-4 B11-7 K1-4 D7-4 X2-5
~swing N7-4 N8+10 SH5-5 SH6-7 W5-4 W8-4 W9-4 W10+5 L4+8
~t L3-4 L5+3 D3+7 D6-3
~tail K3+4 W11-5
~tak W3-4 W4+5
~tank B8+3
~taut B11+5 K4+4
~tech K7+3
~tension SH2+5 SH4-4 B11+3 B15+3 K4+6 D2+5
~tent N1-5 N5-3 N8-4 SH1-6 SH2-3 SH4-3 B1-4 B3-5 B4-4 B5-3 B6-4 B8-7 B9-3 B13+5 B14-4 B15-4 A2-3 A3-4 A4-5 K2-3 K6-3 W4-6 L2-4 D2-3 X3+10 X4-4
~thigh W9+7
~throat N2+11 N5-3 N7+4 N8-3
~throttl N1-6 N2+11 N3-3 N4-3 N7-8 N8-3 SH1-4 SH2-3 SH3-3 SH5-3 SH8-4 B3-4 B6-4 B8-5 B9-3 B10-5 B12-3 B13-6 B14-4 A1-4 A2-5 A3-4 A4-5 K2-4 K4-3 K5-4 K6-4 W1-3 W4-5 W6-3 W9-3 W11-3 L2-3 L4-4 L6-4 L9-3 D1-3 D2-4 D6-3 D7-4 X1-4 X3-7 X4-4
~through B8+10 A2-12 D2+3
~tight SH2+3 B1+6 B11+4 B15+4 A1+4 K1+7 L8+3 D2+6 D7+4 X2+5
~tilt N5-3 SH6+3 B2+4 K3+4 W7+4 W8-3 L4-4 L9+7 D8-4
~tip N8+5 SH1+6 SH2+7 B4-4 B7+10 W12+4
~toe SH6-4 B2-4 B10-3 B14-4 A5-5 W5-3 W6+6 W7-4 W8-5
~together SH4-3 B4-5 B5-5 B6+9
~toil X3-5 X4+8
~top N5+3 SH3-6 SH4+6 SH6+5 SH7+6 B8-5 B10-4 B12-3 K7+4 W1-6 W2-4 W10-3 L2+4 L3-3 L4-3 L7+5 D2+6 D4-3 D5-5 D7-4
~torpedo B4+3
~torso SH4-3 B2-4 B4-4 B14-4 K3-4 K5-4 W1+9 W2+8 D3-3 L7-4 L9-3
~toward N7-3 K4+8 W2-5 W4-3 W5+9 W6+4 W7+6 W11-3
~travel N7+6 SH5-4
~travell N5-4 N7+6 SH3-4 SH5-5
~tuck N4-4 L1-8 L2-16 L4-5 L6+17 L7-8 D5-6
~tug N7+6 N8-7
~tum B2-7 W10+9
~turn L4+6 X1+7 X3-3
~twist W6+4 W8-5 D8-4 X1+13 X3-3
~tyr N1-4 N2-8 N4+7 N5-4 SH1-3 A5-3 K3-6 K7-3
~under B5+3 B8-7 B13+7 B14+11 A1+9 A2+7 A5-3 D4+11
~underarm A1+8 A2+5 A5-6 L1+4 L4+5 L6-3 L7-5 D4+7
~underboob B5-6 B13+8 B14-7 A2-3 W1-4
~underbust N2-6 N3-3 SH4-5 B1-5 B5-4 B11-4 B13+10 B14-7 A1-4 K1-4 W1-4 W3-5 W9-3 L1-3 L3-3 D7-4 X2-8 X3-4 X4-3
~underwear B8+4 A2+6 D6+6
~undon B1-3 B12+4
~undulat L9-5 D1-3 D6-4 D7-4 D8+10
~unequal L4-4 L9-5 D1-4 D2-4 D5+6 D8-4 X1-4
~uneven SH8+8 B15-4 W11+3 L1-4 L4-7 D5+5 D6-3 D7-5 D8+8 X1-6
~uniboob N4-3 N5-3 N6-3 N8-3 SH1-3 SH2-3 SH6-3 SH7-3 SH8-3 B1+8 B2-3 B7-5 B8-3 B9-3 B10-3 B12-3 B13-3 B14-3 B15-3 A2-3 A3-5 A5-3 K2-3 K3-3 K4-3 K5-5 K6-3 K7-3 W1-3 W2-3 W3-3 W4-3 W5-3 W6-3 W7-3 W8-3 W9-3 W10-3 W11-3 W12-3 L1-6 L2-5 L5-3 D4-3 X1-3 X2-3 X3-3
~unlevel L9+4 D5-3 X1-4
~untuck D3+5
~upper B10+9 B11+5 A4+7 K3+9 K5+10 L3+6 X3-4
~upright N7-3 SH5-5 SH8-3 B3-4 B9-3 B10+7 B13-4 A3-3 A4+6 A5-4 K1-4 K2-6 K3-3 K5+8 K6+4 W2-3 L4-3 D5-3
~upsid L1+6 L2-3 L3-4 L4-6 L6-3 D1-4 D6-4
~use B2+4
~v N1+9 N2+5 N3-3 N6-4 SH3-4 SH4-4 SH7+3 B1-6 B2+3 B11-4 B15+4 A2+4 L1+8 L4-5
~veer W6+4 W7+5 W8-5
~version X4+10
~vertebra N2-4 N3-6 N4-3 N5-3 N8-4 K7+5
~vertical B8-5 B10+12 B13+4 A3-4 A4+3 A5-6 K2-6 K5-3 K6+4 W2-4
~visibl SH6+4 D6+7
~waist K2+4 K6+6 W1+10 W2+7 W3+12 W4+12 W5+5 W12+3
~waistband B2+3
~waistlin B2+3 K2-4 W1+4 W2+5 W3+7 W4+7 W10-5
~wander N7+9 SH3-3 SH5-4 SH7-5 B2-4 B6-3 A4-3 K3-5 K6-3 K7-3 W3-5 W4-3 W5-4 W7-5 W8-10 W11-3 L4+5 L6-3 L7-4 L9-5 D5-5 D8-4 X1+5
~want N2-3 SH1-6 SH3-5 SH5-3 SH8-4 B2-4 B4-6 B5-6 B6-5 B7-4 B12-4 B13-3 A2-4 A4-4 K5-3 K6-4 W1+4 W12-4 L8+5 D1+5 D4-4 D5-3 X1-3 X3-5 X4-3
~wash N1-4 N2-6 N3-4 N4-4 N5-4 N6-4 N7-4 N8-4 SH1-4 SH2-4 SH3-4 SH4-5 SH5-4 SH6-4 SH7-4 SH8-4 B1-5 B2-5 B3-4 B4-4 B5-4 B6-4 B7-4 B8-4 B9-4 B10-4 B11-5 B12-4 B13-4 B14-4 B15-4 A1-5 A2-4 A3-4 A4-4 A5-4 K1-6 K2-4 K3-5 K4-4 K5-4 K6-4 K7-4 W1-5 W2-4 W3-6 W4-4 W5-4 W6-4 W7-4 W8-4 W9-5 W10-4 W11-4 W12-4 L1-5 L2-4 L3-5 L4-4 D3+6 L6-4 L7-5 L8-5 L9-4 D1-4 D2-4 D4-4 D5-4 D7-5 D8-4 X1-4 X2-10 X3-4 X4+15
~wav W8+6 D8+4
~whiff SH8-5 W5-3 W8-5 W11-5 L9-6 D5-4 X1+7
~whisker B1+5 B15-3
~wid N1-5 N2-3 N5+4 SH1-3 SH3+9 SH4+8 B1-3 B3-8 B5-3 B6+5 B8-3 B9-7 B10+9 A4+7 K3-3 K5-5 W3-3 W4+4 L2-4 L9-3 D1-4 D2-4 D5-4 D6+10 D7-4 D8-4 X2-3 X3+3
~widow K7+6
~width N1-3 N5+4 SH2-4 SH4+5 B1-3 B6-3 B10+5 A4+4 K3-7 K5-8 K6+7 W4-8 L1-3 L3+5 D7-5 X2-8 X3-9
~wind L4-8 X1+6
~wing N1-3 N2-4 N4-3 N5-5 N6-3 N7-3 N8-4 SH1+6 SH2-4 SH3-8 SH4-8 SH5-3 SH6-4 SH7-8 SH8-6 B3-3 B5-3 B8-5 B9-3 B10-3 B11-3 B13-4 B14-3 A1-8 A3-4 A4-4 A5-3 K1-6 K2-3 K6-3 K7-3 W1-3 W4-3 W9-3 L1-4 L2-5 L4-5 L5-3 D3-3 L6-5 L7-6 L8-3 L9-3 D1+16 D2-4 D5-4 D6-4 X1-3 X3-5 X4-5
~wonk W11+10
~work N2-3
~wrinkl B1+4 B7+3 A5+5 L7+5 X4+4
~wrist L9+4 D8-4
~yank N7+8 N8-8 SH4+6 L1-3 D2-4
~zigzag W6-3 W8+5
~zip W3+6
`
