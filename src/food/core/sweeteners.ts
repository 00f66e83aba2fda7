/** Foods of the core table, one a line; src/food/core-row.ts says what the columns are. Figures: USDA SR28. */
export const sweeteners = `
19335 | sugar | granulated sugar; white sugar; caster sugar; golden caster sugar; superfine sugar; cane sugar | plant | ready | sugar |  | tsp 4.2; cup 200 |  | - - 3.87 | 0.02 387 0 0 0 - 0 99.98 0 99.8 0 0.01 1 2 1 0.05 0 | Sugars, granulated
19336 | icing sugar | powdered sugar; confectioners' sugar | plant | ready | sugar |  | tsp 2.5; tbsp 8; cup 120 |  | 3.5 8.4 3.9 | 0.23 389 0 0 0 - 0 99.77 0 97.81 0 0.01 2 2 1 0.06 0 | Sugars, powdered
19334 | brown sugar | soft brown sugar; light brown sugar; dark brown sugar; soft light brown sugar; soft dark brown sugar; muscovado sugar; light muscovado sugar; dark muscovado sugar | plant | ready | sugar |  | tsp 4.6; cup 220 |  | 4 0 3.87 | 1.34 380 0.12 0 0 - 0 98.09 0 97.02 0 0.45 28 133 83 0.71 0 | Sugars, brown
19908 | demerara sugar | turbinado sugar; raw sugar | plant | ready | sugar |  | tsp 4.6; cup 202 |  |  | 0.03 399 0 0 - - - 99.8 - 99.19 - 0.17 3 29 12 0.37 - | Sugar, turbinado
19340 | maple sugar |  | plant | ready | sugar |  | tsp 3 |  | 3.36 8.37 3.87 | 8 354 0.1 0.2 0.036 - 0 90.9 0 84.87 0 0.8 11 274 90 1.61 0 | Sugars, maple
43216 | fructose | fruit sugar; fructose powder | plant | ready | sugar |  | tsp 4.2; cup 196 |  |  | 0 368 0 0 0 - 0 100 0 92.7 0 0 12 0 0 0.1 0 | Sweeteners, tabletop, fructose, dry, powder
19296 | honey | runny honey; clear honey; set honey | honey | ready | sugar |  | tbsp 21; cup 339 |  | 3.36 8.37 3.68 | 17.1 304 0.3 0 0 - 0 82.4 0.2 82.12 0 0.2 4 52 6 0.42 0 | Honey
19353 | maple syrup |  | plant | ready | sugar |  | tbsp 20; cup 315 |  | 3.36 8.37 3.87 | 32.39 260 0.04 0.06 0.007 - 0 67.04 0 60.46 0 0.47 12 212 102 0.11 0 | Syrups, maple
19912 | agave syrup | agave nectar; agave | plant | ready | sugar |  | tsp 6.9; cup 220 |  |  | 22.94 310 0.09 0.45 0 - 0 76.37 0.2 68.03 0 0.14 4 4 1 0.09 0 | Sweetener, syrup, agave
19304 | molasses |  | plant | ready | sugar |  | tbsp 20; cup 337 |  | - 8.37 3.87 | 21.87 290 0 0.1 0.018 - 0 74.73 0 74.72 0 3.3 37 1464 205 4.72 0 | Molasses
90480 | cane syrup |  | plant | ready | sugar |  |  |  | 0 0 3.68 | 26 269 0 0 0 - 0 73.14 0 73.2 0 0.86 58 63 13 3.6 0 | Syrup, Cane
19350 | corn syrup, light | corn syrup; light corn syrup | plant | ready | sugar |  | tbsp 22; cup 341 |  | 0 0 3.68 | 22.81 283 0 0.2 0 - 0 76.79 0 76.77 0 0.2 62 1 13 0 0 | Syrups, corn, light
19349 | corn syrup, dark | dark corn syrup | plant | ready | sugar |  | tbsp 20; cup 328 |  | 0 0 3.68 | 22.01 286 0 0 0 - 0 77.59 0 77.59 0 0.4 155 44 18 0.37 0 | Syrups, corn, dark
19352 | malt syrup | malt extract; barley malt syrup; barley malt extract | plant | ready | sugar | barley | tbsp 21; cup 332 |  | 3.87 8.37 4.12 | 21.1 318 6.2 0 0 - 0 71.3 0 71.3 0 1.3 35 320 61 0.96 - | Syrups, malt
19355 | sorghum syrup |  | plant | ready | sugar |  | tbsp 21; cup 330 |  | - - 3.87 | 22.7 290 0 0 0 - 0 74.9 0 74.9 0 2.4 8 1000 150 3.8 0 | Syrups, sorghum
42040 | grenadine | grenadine syrup; pomegranate syrup | plant | ready | sugar |  | tsp 6.7; tbsp 20 |  | 4 9 4 | 32.4 268 0 0 0 - 0 66.91 0 46.55 0 0.69 27 28 6 0.05 0 | Syrups, grenadine
19018 | fruit syrup |  | plant | ready | sugar |  | cup 334 |  |  | 14.74 341 0 0 0 0 0 85.13 0.1 53 0 0.13 0 7 8 0.04 0 | Fruit syrup
14181 | chocolate syrup |  | plant | ready | sugar |  | cup 300; tbsp 19.5 |  | 4 9 4 | 31 279 2.1 1.13 0.519 - 0 65.1 2.6 49.65 0 0.67 72 224 14 2.11 0 | Beverages, chocolate syrup
19348 | chocolate fudge sauce | fudge sauce; chocolate fudge topping | plant; dairy | ready | sugar | milk | cup 304; tbsp 19 |  | 4 9 4 | 21.8 350 4.6 8.9 3.98 - 1 62.9 2.8 34.82 0 1.8 346 284 49 1.3 0 | Syrups, chocolate, fudge-type
19364 | caramel sauce | butterscotch sauce; caramel topping | plant; dairy | ready | sugar | milk | tbsp 20.5 |  | 4.27 8.8 3.7 | 40.63 216 1.21 0 0 0 0 57.01 0 57 0 1.15 341 66 49 0 0 | Toppings, butterscotch or caramel
43026 | sugar-free syrup | syrup, sugar-free | plant | ready | sweetener |  | tbsp 15; cup 240 |  |  | 87 52 0.8 0 0 - 0 12.13 0.7 0.01 0 0.07 210 0 0 0 0 | Syrups, sugar free
19297 | jam | strawberry jam; raspberry jam; blackcurrant jam; fruit preserve | plant | ready | sugar |  | tbsp 20 |  | 4 9 4 | 30.47 278 0.37 0.07 0.01 - 0 68.86 1.1 48.5 0 0.23 32 77 20 0.49 0 | Jams and preserves
19719 | apricot jam | apricot preserve | plant | ready | sugar |  | tbsp 20 |  | 3.36 8.37 3.7 | 34.5 242 0.7 0.2 0.01 - 0 64.4 0.3 43.4 0 0.2 40 77 20 0.49 0 | Jams and preserves, apricot
19303 | marmalade | orange marmalade | plant | ready | sugar |  | tbsp 20; cup 320 |  | 3.4 8.4 3.7 | 33.2 246 0.3 0 0 - 0 66.3 0.7 60 0 0.2 56 37 38 0.15 0 | Marmalade, orange
19300 | fruit jelly preserve | redcurrant jelly; crab apple jelly; jelly preserve | plant | ready | sugar |  | tbsp 21 |  | 3.36 8.37 3.8 | 29.77 266 0.15 0.02 0.005 - 0 69.95 1 51.22 0 0.12 30 54 7 0.19 0 | Jellies
43344 | jam, reduced-sugar | reduced-sugar jam; low-sugar jam; marmalade, reduced-sugar | plant | ready | sugar |  |  |  |  | 62 151 0 0.1 0.005 - 0 37.6 1.5 29.41 0 0.3 0 59 0 0 0 | Jams, preserves, marmalade, reduced sugar
19920 | fruit spread, sweetened with fruit juice | fruit spread; jam, sweetened with fruit juice | plant | ready | sugar |  |  |  |  | 46.84 212 0 0 0 0 0 52.93 0.9 42 0 0.23 0 65 11 0.34 0 | Jams, preserves, marmalades, sweetened with fruit juice
43028 | jam, no added sugar, with saccharin | diabetic jam; sugar-free jam | plant | ready | sugar; sweetener |  | tbsp 14; cup 224 |  | 0 0 2.47 | 45.8 132 0.3 0.3 0.016 - 0 53.42 2.5 37.81 0 0.18 0 69 9 0.4 0 | Jams and preserves, no sugar (with sodium saccharin), any flavor
19294 | apple butter | fruit butter, apple | plant | ready | sugar |  | tbsp 17; cup 282 |  | 4 9 4 | 56.45 173 0.39 0.3 0.053 - 0 42.47 1.5 35.3 0 0.39 15 91 14 0.31 0 | Fruit butters, apple
19918 | stevia powder | stevia; stevia extract; stevia leaf extract | plant | ready | sweetener |  | sachet 1 |  |  | 0 0 0 0 0 0 0 100 0 0 0 0 0 0 0 0 0 | Sweetener, herbal extract powder from Stevia leaf
43158 | saccharin sweetener, tabletop | saccharin; saccharin sweetener | plant; mineral | ready | sweetener |  | sachet 1 |  | 4 9 4 | 8.75 360 0.94 0 0 - 0 89.11 0 85.19 0 1.19 428 4 0 0.04 0 | Sweeteners, tabletop, saccharin (sodium saccharin)
19907 | sugar and sucralose baking blend | sucralose baking blend | plant | ready | sugar; sweetener |  | tbsp 14.5; cup 202 |  |  | 0.43 398 0 0 - - - 99.53 - 47.05 - 0.04 2 2 1 0.06 - | Sweeteners, for baking, contains sugar and sucralose
19906 | brown sugar and sucralose baking blend | brown sucralose baking blend | plant | ready | sugar; sweetener |  | tbsp 12.9; cup 189 |  |  | 2.44 388 0 0 - - - 97.11 - 45.66 - 0.45 11 130 63 1.64 - | Sweeteners, for baking, brown, contains sugar and sucralose
19909 | brown sugar substitute | brown sweetener, granulated | plant | ready | sweetener |  | tsp 0.5; cup 23 |  |  | 9.14 347 2.06 0 - - - 84.77 0.6 4.03 - 4.03 572 39 879 0.16 - | Sweeteners, sugar substitute, granulated, brown
19116 | marshmallows | marshmallow; mini marshmallows | gelatine; plant | ready | sugar |  | cup 50; each 7.2 |  | 3.9 8.4 3.8 | 16.4 318 1.8 0.2 0.056 - 0 81.3 0.1 57.56 0 0.3 80 5 3 0.23 0 | Candies, marshmallows
`
