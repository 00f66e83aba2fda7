/** Foods of the core table, one a line; src/food/core-row.ts says what the columns are. Figures: USDA SR28. */
export const fats = `
01145 | unsalted butter | butter, unsalted; sweet butter | dairy | ready | fat | milk | tbsp 14.2; cup 227; stick 113; tsp 4.7 |  | 4.27 8.79 3.87 | 17.94 717 0.85 81.11 50.489 - 215 0.06 0 0.06 0 0.09 11 24 24 0.02 0 | Butter, without salt
01001 | butter | salted butter; butter, salted | dairy | ready | fat | milk | tbsp 14.2; cup 227; stick 113; tsp 4.7 |  | 4.27 8.79 3.87 | 15.87 717 0.85 81.11 51.368 3.278 215 0.06 0 0.06 0 2.11 643 24 24 0.02 0 | Butter, salted
01003 | ghee | clarified butter; butter oil | dairy | ready | fat | milk | tbsp 12.8; cup 205 |  | 4.27 8.79 3.87 | 0.24 876 0.28 99.48 61.924 - 256 0 0 0 0 0 2 5 4 0 0 | Butter oil, anhydrous
04601 | light butter | reduced-fat butter; light butter, salted | dairy | ready | fat | milk | tbsp 14 |  |  | 42.1 499 3.3 55.1 34.321 - 106 0 0 0 0 1 450 71 48 1.09 0 | Butter, light, stick, with salt
04602 | light butter, unsalted |  | dairy | ready | fat | milk | tbsp 14 |  |  | 43.2 499 3.3 55.1 34.321 - 106 0 0 0 0 0.5 36 71 48 1.09 0 | Butter, light, stick, without salt
04585 | butter blend | butter and oil blend; spreadable butter | dairy; plant | ready | fat | milk; soy | tbsp 14.1; cup 227; tsp 4.7; stick 111 |  |  | 17.07 727 0.31 80.32 14.198 14.95 12 0.77 0 0 0 1.53 719 22 10 0.04 0 | Margarine-like, margarine-butter blend, soybean oil and butter
42309 | butter spread, 50 % fat | reduced-fat butter spread | dairy; plant | ready | fat | milk | tbsp 14 |  |  | 46 450 1 50 16.669 - 71 1 0 0 0 2 607 37 28 0.09 0 | Margarine-like, vegetable oil-butter spread, reduced calorie, tub, with salt
04600 | butter spread, 40 % fat | light butter spread | dairy; plant | ready | fat | milk | tbsp 14 |  |  | 56 362 1 40 7.238 - 0 1 0 0 0 2 786 36 24 0.04 0 | Margarine-like, vegetable oil-butter spread, tub, with salt
04611 | margarine, soft | soft margarine; tub margarine; margarine | plant; dairy | ready | fat | milk; soy | tbsp 14.2; cup 227 |  | 4.27 8.84 3.87 | 17.07 713 0.22 80.17 14.224 5.827 0 0.75 0 0 0 1.78 657 17 3 0 0 | Margarine, regular, 80% fat, composite, tub, with salt
04610 | margarine, block | block margarine; stick margarine | plant; dairy | ready | fat | milk; soy | tbsp 14; cup 227; tsp 4.7 |  | 4.27 8.84 3.87 | 16.52 717 0.16 80.71 15.189 14.89 0 0.7 0 0 0 1.92 751 18 3 0.06 0 | Margarine, regular, 80% fat, composite, stick, with salt
04613 | vegetable spread, 60 % fat | 60 % fat spread | plant; dairy | ready | fat | milk; soy | tbsp 14; cup 229; tsp 4.8 |  | 3.87 8.84 4.27 | 37.58 533 0.17 59.81 12.086 3.664 1 0.86 0 0 0 1.59 615 30 21 0 0 | Margarine-like, vegetable oil spread, 60% fat, tub, with salt
04630 | vegetable spread, 48 % fat |  | plant | ready | fat |  | tbsp 14 |  | 4.27 8.84 3.87 | 49.66 424 0.2 47.53 8.792 4.422 1 0.86 0 - - 1.75 646 36 4 0.21 - | Margarine Spread, approximately 48% fat, tub
04128 | vegetable spread, 37 % fat | light spread; reduced-fat spread; low-fat spread | plant | ready | fat |  | tbsp 14.9; cup 232 |  | 4.27 8.84 3.8 | 59.55 339 0.51 37.77 8.637 1.359 0 0.66 0 0 0 1.52 589 34 6 0.02 0 | Margarine-like, vegetable oil spread, unspecified oils, approximately 37% fat, with salt
04633 | vegetable spread, 20 % fat | extra light spread | plant | ready | fat |  | tbsp 15; cup 240 |  | - 9.02 - | 78.8 175 0 19.5 2.87 - 0 0.4 0 0 0 1.3 733 25 0 0 0 | Margarine-like, vegetable oil spread, 20% fat, with salt
04631 | vegetable spread, fat-free | fat-free spread | plant | ready | fat |  | tbsp 14.6; cup 233 |  | 4.27 8.84 3.87 | 90.69 44 0.1 3.04 2.128 0.168 0 4.34 0 0 0 1.83 580 36 8 0.08 0 | Margarine-like, vegetable oil spread, fat-free, tub
04615 | vegetable shortening | shortening; white vegetable fat | plant | ready | fat |  | tbsp 12.8; cup 205 |  | - 8.84 - | 0 884 0 99.97 24.98 13.164 0 0 0 0 0 0.03 4 0 1 0.07 0 | Shortening, vegetable, household, composite
04002 | lard |  | pork | ready | fat |  | tbsp 12.8; cup 205 |  | - 9.02 - | 0 902 0 100 39.2 - 95 0 0 0 0 0 0 0 0 0 2.5 | Lard
04001 | beef dripping | beef tallow; dripping | beef | ready | fat |  | tbsp 12.8; cup 205 |  | - 9.02 - | 0 902 0 100 49.8 - 109 0 0 0 0 0 0 0 0 0 0.7 | Fat, beef tallow
13335 | suet | beef suet | beef | raw | fat |  |  |  | 4.27 9.02 3.87 | 4 854 1.5 94 52.3 - 68 0 0 0 0 0.1 7 16 2 0.17 - | Beef, variety meats and by-products, suet, raw
04609 | bacon fat | bacon grease | pork | ready | fat |  | tsp 4.3 |  |  | 0 897 0 99.5 39.004 - 95 0 0 0 0 0.5 150 0 0 0 2.5 | Animal fat, bacon grease
04542 | chicken fat | schmaltz | poultry | ready | fat |  | tbsp 12.8; cup 205 |  | - 9.02 - | 0.2 900 0 99.8 29.8 - 85 0 0 0 0 0 0 0 0 0 4.8 | Fat, chicken
04574 | duck fat |  | poultry | ready | fat |  | tbsp 12.8; cup 205 |  | - 8.84 - | 0.2 882 0 99.8 33.2 - 100 0 0 0 0 0 0 0 0 0 4.8 | Fat, duck
04576 | goose fat |  | poultry | ready | fat |  | tbsp 12.8; cup 205 |  | - 8.84 - | 0.2 900 0 99.8 27.7 - 100 0 0 - - 0 0 0 0 0 - | Fat, goose
04053 | olive oil | extra virgin olive oil | plant | ready | fat |  | tbsp 13.5; cup 216; tsp 4.5 |  | - 8.84 - | 0 884 0 100 13.808 - 0 0 0 0 0 0 2 1 1 0.56 0 | Oil, olive, salad or cooking
04582 | rapeseed oil | canola oil; vegetable oil; frying oil | plant | ready | fat |  | tbsp 14; cup 218; tsp 4.5 |  | - 8.84 - | 0 884 0 100 7.365 0.395 0 0 0 0 0 0 0 0 0 0 0 | Oil, canola
04506 | sunflower oil |  | plant | ready | fat |  | tbsp 13.6; cup 218; tsp 4.5 |  | - 8.84 - | 0 884 0 100 10.3 - 0 0 0 0 0 0 0 0 0 0 0 | Oil, sunflower, linoleic, (approx. 65%)
04584 | sunflower oil, high oleic | high oleic sunflower oil | plant | ready | fat |  | tbsp 14; cup 218; tsp 4.5 |  | - 8.84 - | 0 884 0 100 9.859 - 0 0 0 0 0 0 0 0 0 0 0 | Oil, sunflower, high oleic (70% and over)
04518 | maize oil | corn oil | plant | ready | fat |  | tbsp 13.6; cup 218; tsp 4.5 |  |  | 0 900 0 100 12.948 - 0 0 0 0 0 0 0 0 0 0 0 | Oil, corn, industrial and retail, all purpose salad or cooking
04044 | soya oil | soybean oil | plant | ready | fat |  | tbsp 13.6; cup 218; tsp 4.5 |  | - 8.84 - | 0 884 0 100 15.65 0.533 0 0 0 0 0 0 0 0 0 0.05 0 | Oil, soybean, salad or cooking
04042 | groundnut oil | peanut oil | plant | ready | fat | peanut | tbsp 13.5; cup 216; tsp 4.5 |  | - 8.84 - | 0 884 0 100 16.9 - 0 0 0 0 0 0 0 0 0 0.03 0 | Oil, peanut, salad or cooking
04058 | sesame oil | toasted sesame oil | plant | ready | fat | sesame | tbsp 13.6; cup 218; tsp 4.5 |  | - 8.84 - | 0 884 0 100 14.2 - 0 0 0 0 0 0 0 0 0 0 0 | Oil, sesame, salad or cooking
04047 | coconut oil |  | plant | ready | fat |  | tbsp 13.6; cup 218; tsp 4.5 |  |  | 0.03 892 0 99.06 82.475 0.028 0 0 0 0 0 0.03 0 0 1 0.05 0 | Oil, coconut
04517 | grapeseed oil |  | plant | ready | fat |  | tbsp 13.6; cup 218; tsp 4.5 |  | - 8.84 - | 0 884 0 100 9.6 - 0 0 0 0 0 0 0 0 0 0 - | Oil, grapeseed
04528 | walnut oil |  | plant | ready | fat | walnut | tbsp 13.6; cup 218; tsp 4.5 |  | - 8.84 - | 0 884 0 100 9.1 - 0 0 0 0 0 0 0 0 0 0 0 | Oil, walnut
04532 | hazelnut oil |  | plant | ready | fat | hazelnut | tbsp 13.6; cup 218; tsp 4.5 |  | - 8.84 - | 0 884 0 100 7.4 - 0 0 0 0 0 0 0 0 0 0 - | Oil, hazelnut
04529 | almond oil |  | plant | ready | fat | almond | tbsp 13.6; cup 218; tsp 4.5 |  | - 8.84 - | 0 884 0 100 8.2 - 0 0 0 0 0 0 0 0 0 0 0 | Oil, almond
04581 | avocado oil |  | plant | ready | fat |  | tbsp 14; cup 218; tsp 4.5 |  | - 8.84 - | 0 884 0 100 11.56 - - 0 0 - - 0 0 0 0 0 - | Oil, avocado
42231 | linseed oil | flaxseed oil | plant | ready | fat |  | tbsp 13.6; cup 218 |  | - 8.84 - | 0.12 884 0.11 99.98 8.976 0.094 0 0 0 0 0 0 0 0 1 0 0 | Oil, flaxseed, cold pressed
04037 | rice bran oil |  | plant | ready | fat |  | tbsp 13.6; cup 218; tsp 4.5 |  | - 8.84 - | 0 884 0 100 19.7 - 0 0 0 0 0 0 0 0 0 0.07 - | Oil, rice bran
04511 | safflower oil |  | plant | ready | fat |  | tbsp 13.6; cup 218; tsp 4.5 |  | - 8.84 - | 0 884 0 100 7.541 0.096 0 0 0 0 0 0 0 0 0 0 0 | Oil, safflower, salad or cooking, high oleic (primary safflower oil of commerce)
04038 | wheat germ oil |  | plant | ready | fat | wheat | tbsp 13.6; cup 218; tsp 4.5 |  | - 8.84 - | 0 884 0 100 18.8 - 0 0 0 0 0 0 0 0 0 0 0 | Oil, wheat germ
04055 | palm oil |  | plant | ready | fat |  | tbsp 13.6; cup 216; tsp 4.5 |  | - 8.84 - | 0 884 0 100 49.3 - 0 0 0 0 0 0 0 0 0 0.01 - | Oil, palm
04583 | mustard oil |  | plant | ready | fat | mustard | tbsp 14; cup 218; tsp 4.5 |  | - 8.84 - | 0 884 0 100 11.582 - - 0 0 - - 0 0 0 0 0 - | Oil, mustard
04501 | cocoa butter |  | plant | ready | fat |  | tbsp 13.6; cup 218; tsp 4.5 |  | - 8.84 - | 0 884 0 100 59.7 - 0 0 0 0 0 0 0 0 0 0 - | Oil, cocoa butter
`
