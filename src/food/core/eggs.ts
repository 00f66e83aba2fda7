/** Foods of the core table, one a line; src/food/core-row.ts says what the columns are. Figures: USDA SR28. */
export const eggs = `
01123 | egg | whole egg; eggs; hen's egg | egg | raw |  | egg | large 50; cup 243; medium 44; small 38; each 50 | 12 | 4.36 9.02 3.68 | 76.15 143 12.56 9.51 3.126 0.038 372 0.72 0 0.37 0 1.06 142 138 56 1.75 2 | Egg, whole, raw, fresh
01124 | egg white | egg whites | egg | raw |  | egg | large 33; cup 243; each 33 |  | 4.36 9.02 3.68 | 87.57 52 10.9 0.17 0 - 0 0.73 0 0.71 0 0.63 166 163 7 0.08 0 | Egg, white, raw, fresh
01125 | egg yolk | egg yolks | egg | raw |  | egg | large 17; cup 243; each 17 |  | 4.36 9.02 3.68 | 52.31 322 15.86 26.54 9.551 - 1085 3.59 0 0.56 0 1.71 48 109 129 2.73 5.4 | Egg, yolk, raw, fresh
01129 | egg, hard-boiled | hard-boiled egg; boiled egg | egg | cooked |  | egg | large 50; cup 136; each 50 | 12 | 4.36 9.02 3.68 | 74.62 155 12.58 10.61 3.267 - 373 1.12 0 1.12 0 1.08 124 126 50 1.19 2.2 | Egg, whole, cooked, hard-boiled
01131 | egg, poached | poached egg | egg | cooked |  | egg | large 50 |  | 4.36 9.02 3.68 | 75.85 143 12.51 9.47 3.113 0.038 370 0.71 0 0.37 0 1.46 297 138 56 1.75 2 | Egg, whole, cooked, poached
01128 | egg, fried | fried egg | egg | cooked |  | egg | large 46 |  | 4.36 9.02 3.68 | 69.47 196 13.61 14.84 4.323 0.041 401 0.83 0 0.4 0 1.26 207 152 62 1.89 2.2 | Egg, whole, cooked, fried
01132 | egg, scrambled | scrambled egg; scrambled eggs | egg; dairy | cooked |  | egg; milk | large 61; cup 220 |  | 4.36 9.02 3.68 | 76.4 149 9.99 10.98 3.331 0.624 277 1.61 0 1.39 0 1.01 145 132 66 1.31 1.8 | Egg, whole, cooked, scrambled
01130 | omelette | omelet; egg omelette | egg | cooked |  | egg | large 61 |  | 4.36 9.02 3.68 | 76.13 154 10.57 11.66 3.319 0.709 313 0.64 0 0.31 0 1.01 155 117 48 1.48 1.7 | Egg, whole, cooked, omelet
01171 | liquid whole egg, pasteurised | pasteurised whole egg; liquid egg | egg | raw |  | egg |  |  | 4.36 9.02 3.68 | 75.81 147 12.33 9.95 3.382 0.054 372 1.01 0 0.25 0 0.91 128 135 62 1.74 2.6 | Egg, whole, raw, frozen, pasteurized
01172 | liquid egg white, pasteurised | pasteurised egg white; liquid egg white; carton egg whites | egg | raw |  | egg |  |  | 4.36 9.02 3.68 | 88.17 48 10.2 0 0 0 0 1.04 0 0.25 0 0.6 169 169 8 0.04 0 | Egg, white, raw, frozen, pasteurized
01126 | liquid egg yolk, pasteurised | pasteurised egg yolk | egg | raw |  | egg |  |  |  | 56.44 296 15.53 25.6 8.615 0.098 991 0.81 0 0.16 0 1.62 67 121 134 4.55 6 | Egg, yolk, raw, frozen, pasteurized
01133 | whole egg powder | dried whole egg; egg powder | egg | dry |  | egg | cup 85; tbsp 5 |  |  | 2.78 592 48.05 43.9 15.069 0.265 1630 1.13 0 0.56 0 4.13 476 540 244 7.2 8.3 | Egg, whole, dried
01173 | egg white powder | dried egg white | egg | dry |  | egg |  |  | 4.36 9.02 3.68 | 5.8 382 81.1 0 0 - 0 7.8 0 5.4 0 5.3 1280 1125 62 0.15 0 | Egg, white, dried
01137 | egg yolk powder | dried egg yolk | egg | dry |  | egg | cup 67; tbsp 4 |  |  | 3.08 669 33.63 59.13 20.334 0.346 2307 0.66 0 0.23 0 3.51 149 264 289 9.56 10.4 | Egg, yolk, dried
01138 | duck egg |  | egg | raw |  | egg | each 70 | 12 | 4.36 9.02 3.68 | 70.83 185 12.81 13.77 3.681 - 884 1.45 0 0.93 0 1.14 146 222 64 3.85 1.7 | Egg, duck, whole, fresh, raw
01139 | goose egg |  | egg | raw |  | egg | each 144 | 13 | 4.36 9.02 3.68 | 70.43 185 13.87 13.27 3.595 - 852 1.35 0 0.94 0 1.08 138 210 60 3.64 1.7 | Egg, goose, whole, fresh, raw
01140 | quail egg |  | egg | raw |  | egg | each 9 | 8 | 4.36 9.02 3.68 | 74.35 158 13.05 11.09 3.557 - 844 0.41 0 0.4 0 1.1 141 132 64 3.65 1.4 | Egg, quail, whole, fresh, raw
01141 | turkey egg |  | egg | raw |  | egg | each 79 | 12 | 4.36 9.02 3.68 | 72.5 171 13.68 11.88 3.632 - 933 1.15 0 - - 0.79 151 142 99 4.1 - | Egg, turkey, whole, fresh, raw
01226 | egg substitute, fat-free | liquid egg substitute | egg | raw |  | egg | cup 240 |  | 4.36 8.84 3.68 | 87 48 10 0 0 - 0 2 0 2 0 1.3 199 213 73 1.98 1.6 | Egg substitute, liquid or frozen, fat free
`
