/** Foods of the core table, one a line; src/food/core-row.ts says what the columns are. Figures: USDA SR28. */
export const fish = `
15015 | cod | cod fillet; atlantic cod; white fish | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 81.22 82 17.81 0.67 0.131 - 43 0 0 0 0 1.16 54 413 16 0.38 0.9 | Fish, cod, Atlantic, raw
15016 | cod, baked | baked cod; cooked cod | fish | cooked |  | fish |  |  | 4.27 9.02 3.87 | 75.92 105 22.83 0.86 0.168 - 55 0 0 0 0 1.49 78 244 14 0.49 1.2 | Fish, cod, Atlantic, cooked, dry heat
15018 | salt cod | dried salted cod; bacalao | fish | dry | cured | fish |  |  | 4.27 9.02 3.87 | 16.14 290 62.82 2.37 0.462 - 152 0 0 0 0 18.67 7027 1458 160 2.5 4 | Fish, cod, Atlantic, dried and salted
15019 | pacific cod |  | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 83.95 69 15.27 0.41 0.085 0.005 47 0 0 0 0 1.46 303 235 8 0.16 0.5 | Fish, cod, Pacific, raw (may have been previously frozen)
15033 | haddock | haddock fillet | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 83.38 74 16.32 0.45 0.091 0.004 54 0 0 0 0 1.28 213 286 11 0.17 0.5 | Fish, haddock, raw
15034 | haddock, baked |  | fish | cooked |  | fish |  |  | 4.27 9.02 3.87 | 79.65 90 19.99 0.55 0.111 0.005 66 0 0 0 0 1.56 261 351 14 0.21 0.6 | Fish, haddock, cooked, dry heat
15035 | smoked haddock |  | fish | ready | smoked | fish |  |  | 4.27 9.02 3.87 | 71.48 116 25.23 0.96 0.173 - 77 0 0 0 0 1.62 763 415 49 1.4 0.8 | Fish, haddock, smoked
15066 | pollock, previously frozen | alaska pollock; pollock | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 86.75 56 12.19 0.41 0.124 0.016 46 0 0 0 0 1.36 333 160 15 0.22 0.2 | Fish, pollock, Alaska, raw (may have been previously frozen)
15067 | pollock, baked |  | fish | cooked |  | fish |  |  | 4.27 9.02 3.87 | 73.65 111 23.48 1.18 0.159 - 86 0 0 0 0 1.7 419 430 72 0.56 1.3 | Fish, pollock, Alaska, cooked, dry heat (may have been previously frozen)
15028 | plaice or sole | plaice; sole; flounder; flatfish | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 84.63 70 12.41 1.93 0.441 0.011 45 0 0 0 0 1.22 296 160 21 0.18 2.8 | Fish, flatfish (flounder and sole species), raw
15029 | plaice or sole, baked | plaice, baked; sole, baked | fish | cooked |  | fish |  |  | 4.27 9.02 3.87 | 81.11 86 15.24 2.37 0.542 0.014 56 0 0 0 0 1.49 363 197 25 0.23 3.5 | Fish, flatfish (flounder and sole species), cooked, dry heat
15036 | halibut |  | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 80.34 91 18.56 1.33 0.292 - 49 0 0 0 0 1.29 68 435 7 0.16 4.7 | Fish, halibut, Atlantic and Pacific, raw
15037 | halibut, baked |  | fish | cooked |  | fish |  |  | 4.27 9.02 3.87 | 76.12 111 22.54 1.61 0.354 0.028 60 0 0 0 0 1.57 82 528 9 0.2 5.8 | Fish, halibut, Atlantic and Pacific, cooked, dry heat
15091 | sea bass | seabass | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 78.27 97 18.43 2 0.511 - 41 0 0 0 0 1.09 68 256 10 0.29 5.6 | Fish, sea bass, mixed species, raw
15092 | sea bass, baked |  | fish | cooked |  | fish |  |  | 4.27 9.02 3.87 | 72.14 124 23.63 2.56 0.655 - 53 0 0 - - 1.4 87 328 13 0.37 - | Fish, sea bass, mixed species, cooked, dry heat
15101 | snapper | red snapper | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 76.87 100 20.51 1.34 0.285 - 37 0 0 0 0 1.31 64 417 32 0.18 10.2 | Fish, snapper, mixed species, raw
15102 | snapper, baked |  | fish | cooked |  | fish |  |  | 4.27 9.02 3.87 | 70.35 128 26.3 1.72 0.365 - 47 0 0 - - 1.41 57 522 40 0.24 - | Fish, snapper, mixed species, cooked, dry heat
15054 | monkfish |  | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 83.24 76 14.48 1.52 0.34 - 25 0 0 - - 1.21 18 400 8 0.32 - | Fish, monkfish, raw
15261 | tilapia |  | fish | raw |  | fish | fillet 116 |  |  | 78.08 96 20.08 1.7 0.585 - 50 0 0 0 0 0.93 52 302 10 0.56 3.1 | Fish, tilapia, raw
15262 | tilapia, baked |  | fish | cooked |  | fish | fillet 87 |  |  | 71.59 128 26.15 2.65 0.94 - 57 0 0 0 0 1.14 56 380 14 0.69 3.7 | Fish, tilapia, cooked, dry heat
15234 | catfish, farmed | catfish | fish | raw |  | fish | fillet 159 |  | 4.27 9.02 3.87 | 79.06 119 15.23 5.94 1.31 0.052 55 0 0 0 0 1.05 98 302 8 0.23 0.2 | Fish, catfish, channel, farmed, raw
15235 | catfish, farmed, baked |  | fish | cooked |  | fish | fillet 143 |  | 4.27 9.02 3.87 | 74.65 144 18.44 7.19 1.586 0.063 66 0 0 0 0 1.28 119 366 9 0.28 0.3 | Fish, catfish, channel, farmed, cooked, dry heat
15060 | perch |  | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 79.13 91 19.39 0.92 0.185 - 90 0 0 0 0 1.24 62 269 80 0.9 3 | Fish, perch, mixed species, raw
15062 | pike |  | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 78.92 88 19.26 0.69 0.118 - 39 0 0 0 0 1.2 39 259 57 0.55 2.5 | Fish, pike, northern, raw
15008 | carp |  | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 76.31 127 17.83 5.6 1.083 - 66 0 0 0 0 1.46 49 333 41 1.24 24.7 | Fish, carp, raw
15009 | carp, baked |  | fish | cooked |  | fish |  |  | 4.27 9.02 3.87 | 69.63 162 22.86 7.17 1.388 - 84 0 0 - - 1.87 63 427 52 1.59 - | Fish, carp, cooked, dry heat
15236 | salmon, farmed | salmon; salmon fillet; atlantic salmon | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 64.89 208 20.42 13.42 3.05 - 55 0 0 0 0 1.13 59 363 9 0.34 11 | Fish, salmon, Atlantic, farmed, raw
15237 | salmon, farmed, baked | salmon, baked; cooked salmon | fish | cooked |  | fish |  |  | 4.27 9.02 3.87 | 64.75 206 22.1 12.35 2.397 - 63 0 0 0 0 1.15 61 384 15 0.34 13.1 | Fish, salmon, Atlantic, farmed, cooked, dry heat
15076 | salmon, wild | wild salmon | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 68.5 142 19.84 6.34 0.981 - 55 0 0 - - 2.54 44 490 12 0.8 - | Fish, salmon, Atlantic, wild, raw
15209 | salmon, wild, baked | wild salmon, baked | fish | cooked |  | fish |  |  | 4.27 9.02 3.87 | 59.62 182 25.44 8.13 1.257 - 71 0 0 - - 3.26 56 628 15 1.03 - | Fish, salmon, Atlantic, wild, cooked, dry heat
15085 | sockeye salmon |  | fish | raw |  | fish |  |  |  | 72.54 131 22.25 4.69 0.814 0.019 51 0 0 0 0 1.26 78 367 9 0.43 14.1 | Fish, salmon, sockeye, raw
15083 | pink salmon |  | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 75.52 127 20.5 4.4 0.81 0.034 46 0 0 0 0 1.52 75 366 7 0.38 10.9 | Fish, salmon, pink, raw
15077 | smoked salmon |  | fish | ready | smoked | fish |  |  | 4.27 9.02 3.87 | 72 117 18.28 4.32 0.929 - 23 0 0 0 0 2.62 672 175 11 0.85 17.1 | Fish, salmon, chinook, smoked
15260 | tinned pink salmon, drained | tinned salmon; canned salmon; tinned pink salmon | fish | canned |  | fish |  |  |  | 70.71 138 23.1 5.02 0.895 0.027 83 0 0 0 0 2.5 381 333 283 0.77 14.5 | Fish, salmon, pink, canned, drained solids
15087 | tinned sockeye salmon, drained | tinned red salmon; canned sockeye salmon | fish | canned |  | fish |  |  | 4.27 9.02 3.87 | 68.07 167 23.59 7.39 1.44 0.04 79 0 0 0 0 2.47 408 314 232 0.65 21 | Fish, salmon, sockeye, canned, drained solids
15240 | rainbow trout, farmed | trout; rainbow trout | fish | raw |  | fish | fillet 79 |  | 4.27 9.02 3.87 | 73.8 141 19.94 6.18 1.383 0.047 59 0 0 0 0 1.21 51 377 25 0.31 15.9 | Fish, trout, rainbow, farmed, raw
15241 | rainbow trout, farmed, baked | trout, baked | fish | cooked |  | fish | fillet 71 |  | 4.27 9.02 3.87 | 68.72 168 23.8 7.38 1.651 0.056 70 0 0 0 0 1.44 61 450 30 0.36 19 | Fish, trout, rainbow, farmed, cooked, dry heat
15046 | mackerel | atlantic mackerel | fish | raw |  | fish | fillet 112 |  | 4.27 9.02 3.87 | 63.55 205 18.6 13.89 3.257 - 70 0 0 0 0 1.35 90 314 12 1.63 16.1 | Fish, mackerel, Atlantic, raw
15047 | mackerel, grilled | mackerel, baked | fish | cooked |  | fish | fillet 88 |  | 4.27 9.02 3.87 | 53.27 262 23.85 17.81 4.176 - 75 0 0 - - 1.53 83 401 15 1.57 - | Fish, mackerel, Atlantic, cooked, dry heat
15048 | tinned mackerel, drained | tinned mackerel; canned mackerel | fish | canned |  | fish | cup 190 |  | 4.27 9.02 3.87 | 69.17 156 23.19 6.3 1.857 - 79 0 0 0 0 1.73 379 194 241 2.04 7.3 | Fish, mackerel, jack, canned, drained solids
15039 | herring | atlantic herring | fish | raw |  | fish | fillet 184 |  | 4.27 9.02 3.87 | 72.05 158 17.96 9.04 2.04 - 60 0 0 0 0 1.46 90 327 57 1.1 4.2 | Fish, herring, Atlantic, raw
15040 | herring, grilled | herring, baked | fish | cooked |  | fish | fillet 143 |  | 4.27 9.02 3.87 | 64.16 203 23.03 11.59 2.615 - 77 0 0 0 0 1.87 115 419 74 1.41 5.4 | Fish, herring, Atlantic, cooked, dry heat
15041 | pickled herring | rollmops | fish | ready | cured | fish | cup 140 |  | 4.27 9.02 3.87 | 55.22 262 14.19 18 2.381 - 13 9.64 0 7.71 0 2.95 870 69 77 1.22 2.8 | Fish, herring, Atlantic, pickled
15042 | kippers | kipper; kippered herring | fish | ready | smoked | fish |  |  | 4.27 9.02 3.87 | 59.7 217 24.58 12.37 2.791 - 82 0 0 0 0 1.94 918 447 84 1.51 2.2 | Fish, herring, Atlantic, kippered
15088 | tinned sardines in oil, drained | sardines; tinned sardines; canned sardines | fish | canned |  | fish |  |  | 4.27 9 3.87 | 59.61 208 24.62 11.45 1.528 - 142 0 0 0 0 3.38 307 397 382 2.92 4.8 | Fish, sardine, Atlantic, canned in oil, drained solids with bone
15089 | tinned sardines in tomato sauce, drained | sardines in tomato sauce | fish | canned |  | fish |  |  | 4.27 9.02 3.7 | 66.86 185 20.86 10.45 2.684 - 61 0.54 0.1 0.43 0 1.88 414 341 240 2.3 4.8 | Fish, sardine, Pacific, canned in tomato sauce, drained solids with bone
15001 | anchovy | fresh anchovies | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 73.37 131 20.35 4.84 1.282 - 60 0 0 0 0 1.44 104 383 147 3.25 - | Fish, anchovy, european, raw
15002 | tinned anchovies in oil, drained | anchovies; anchovy fillets; tinned anchovies | fish | canned | cured | fish |  |  | 4.27 8.92 3.87 | 50.3 210 28.89 9.71 2.203 - 85 0 0 0 0 11.1 3668 544 232 4.63 1.7 | Fish, anchovy, european, canned in oil, drained solids
15127 | tuna, yellowfin | tuna; tuna steak; fresh tuna | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 74.03 109 24.4 0.49 0.172 0.016 39 0 0 0 0 1.64 45 441 4 0.77 1.7 | Fish, tuna, fresh, yellowfin, raw
15221 | tuna, yellowfin, grilled | tuna steak, grilled | fish | cooked |  | fish |  |  | 4.27 9.02 3.87 | 68.98 130 29.15 0.59 0.205 0.02 47 0 0 0 0 1.96 54 527 4 0.92 2 | Fish, tuna, yellowfin, fresh, cooked, dry heat
15117 | tuna, bluefin | bluefin tuna | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 68.09 144 23.33 4.9 1.257 - 38 0 0 0 0 1.18 39 252 8 1.02 5.7 | Fish, tuna, fresh, bluefin, raw
15121 | tinned tuna in water, drained | tinned tuna; canned tuna; tuna in water; tuna in spring water | fish | canned |  | fish |  |  |  | 78.14 86 19.44 0.96 0.211 0.002 36 0 0 0 0 0.95 247 179 17 1.63 1.2 | Fish, tuna, light, canned in water, drained solids
15119 | tinned tuna in oil, drained | tuna in oil; canned tuna in oil | fish | canned |  | fish | cup 146 |  | 4.27 9 3.87 | 59.83 198 29.13 8.21 1.534 - 18 0 0 0 0 2.76 416 207 13 1.39 6.7 | Fish, tuna, light, canned in oil, drained solids
15126 | tinned white tuna in water, drained | albacore tuna in water; white tuna in water | fish | canned |  | fish |  |  | 4.27 9.02 3.87 | 73.19 128 23.62 2.97 0.792 - 42 0 0 0 0 1.46 377 237 14 0.97 2 | Fish, tuna, white, canned in water, drained solids
15110 | swordfish | swordfish steak | fish | raw |  | fish |  |  | 4.27 9.02 3.87 | 73.38 144 19.66 6.65 1.602 0.047 66 0 0 0 0 1.44 81 418 5 0.38 13.9 | Fish, swordfish, raw
15111 | swordfish, grilled |  | fish | cooked |  | fish |  |  | 4.27 9.02 3.87 | 68.26 172 23.45 7.93 1.911 0.056 78 0 0 0 0 1.71 97 499 6 0.45 16.6 | Fish, swordfish, cooked, dry heat
15012 | caviar | fish roe, salted | fish | ready | cured | fish | tbsp 16 |  | 3.57 9.02 3.68 | 47.5 264 24.6 17.9 4.06 - 588 4 0 0 0 6.5 1500 181 275 11.88 2.9 | Fish, caviar, black and red, granular
15109 | surimi | seafood sticks | fish | ready |  | fish |  |  | 4.27 9.02 3.87 | 76.34 99 15.18 0.9 0.191 - 30 6.85 0 0 0 0.72 143 112 9 0.26 - | Fish, surimi
15027 | fish fingers, cooked | fish fingers; fish sticks | fish; plant | cooked | frozen | fish; wheat |  |  | 4.2 8.94 3.97 | 49.5 277 11.01 16.23 3.733 0.124 28 21.66 1.5 1.65 0 1.61 402 185 16 0.84 0 | Fish, fish sticks, frozen, prepared
15149 | prawns, previously frozen | prawns; raw prawns; shrimp; king prawns | crustacean | raw |  | crustacean |  |  | 4.27 9.02 4.11 | 83.01 71 13.61 1.01 0.261 0.018 126 0.91 0 0 0 1.86 566 113 54 0.21 0.1 | Crustaceans, shrimp, mixed species, raw (may have been previously frozen)
15151 | prawns, previously frozen, cooked | cooked prawns; cooked shrimp | crustacean | cooked |  | crustacean |  |  | 4.27 9.02 4.11 | 71.56 119 22.78 1.7 0.521 0.035 211 1.52 0 0 0 3.11 947 170 91 0.32 0.1 | Crustaceans, shrimp, mixed species, cooked, moist heat (may have been previously frozen)
15270 | prawns, never frozen | fresh prawns | crustacean | raw |  | crustacean |  | 13 |  | 78.45 85 20.1 0.51 0.101 0.004 161 0 - - - 1.23 119 264 64 0.52 - | Crustaceans, shrimp, raw (not previously frozen)
15152 | tinned prawns | canned shrimp | crustacean | canned |  | crustacean | cup 128 |  | 4.27 9.02 4.11 | 75.85 100 20.42 1.36 0.188 - 252 0 0 0 0 2.54 870 80 145 2.13 0 | Crustaceans, shrimp, mixed species, canned
15139 | blue crab | crab; crab meat, raw | crustacean | raw |  | crustacean |  |  | 4.27 9.02 4.11 | 79.02 87 18.06 1.08 0.222 - 78 0.04 0 - 0 1.81 293 329 89 0.74 - | Crustaceans, crab, blue, raw
15140 | blue crab, cooked | crab meat; cooked crab; white crab meat | crustacean | cooked |  | crustacean | cup 118 |  | 4.27 9.02 4.11 | 79.69 83 17.88 0.74 0.201 0.014 97 0 0 0 0 1.96 395 259 91 0.5 0 | Crustaceans, crab, blue, cooked, moist heat
15141 | tinned crab | canned crab | crustacean | canned |  | crustacean | cup 135 |  | 4.27 9.02 4.11 | 79.69 83 17.88 0.74 0.201 0.014 97 0 0 0 0 1.96 563 259 91 0.5 0 | Crustaceans, crab, blue, canned
15147 | lobster |  | crustacean | raw |  | crustacean |  |  | 4.27 9.02 4.11 | 80.95 77 16.52 0.75 0.181 0.011 127 0 0 0 0 1.88 423 200 84 0.26 0 | Crustaceans, lobster, northern, raw
15148 | lobster, cooked | lobster meat | crustacean | cooked |  | crustacean | cup 145 |  | 4.27 9.02 4.11 | 78.11 89 19 0.86 0.208 0.013 146 0 0 0 0 2.14 486 230 96 0.29 0 | Crustaceans, lobster, northern, cooked, moist heat
15242 | crayfish, farmed | crayfish | crustacean | raw |  | crustacean |  |  | 4.27 9.02 4.11 | 84.05 72 14.85 0.97 0.163 - 107 0 0 - - 1 62 261 25 0.55 - | Crustaceans, crayfish, mixed species, farmed, raw
15243 | crayfish, farmed, cooked | crayfish tails | crustacean | cooked |  | crustacean |  |  | 4.27 9.02 4.11 | 80.8 87 17.52 1.3 0.216 - 137 0 0 - - 1.07 97 238 51 1.11 - | Crustaceans, crayfish, mixed species, farmed, cooked, moist heat
15164 | mussels | mussel; mussel meat | mollusc | raw |  | mollusc | cup 150 |  | 4.27 9.02 4.11 | 80.58 86 11.9 2.24 0.425 - 28 3.69 0 0 0 1.59 286 320 26 3.95 0 | Mollusks, mussel, blue, raw
15165 | mussels, cooked | cooked mussels | mollusc | cooked |  | mollusc |  |  | 4.27 9.02 4.11 | 61.15 172 23.8 4.48 0.85 - 56 7.39 0 - - 3.18 369 268 33 6.72 - | Mollusks, mussel, blue, cooked, moist heat
15157 | clams | clam meat | mollusc | raw |  | mollusc |  |  | 4.27 9.02 4.11 | 78.98 86 14.67 0.96 0.187 0.015 30 3.57 0 0 0 1.82 601 46 39 1.62 0 | Mollusks, clam, mixed species, raw
15160 | tinned clams, drained | canned clams; tinned clams | mollusc | canned |  | mollusc | cup 160 |  | 4.27 9.02 4.11 | 65.26 142 24.25 1.59 0.309 0.024 50 5.9 0 0 0 3 112 628 65 2.68 0.1 | Mollusks, clam, mixed species, canned, drained solids
15171 | oysters | pacific oysters; oyster | mollusc | raw |  | mollusc | medium 50 |  | 4.27 9.02 4.11 | 82.06 81 9.45 2.3 0.51 - 50 4.95 0 - 0 1.23 106 168 8 5.11 - | Mollusks, oyster, Pacific, raw
15172 | scallops | scallop | mollusc | raw |  | mollusc |  |  | 4.27 9.02 4.11 | 82.53 69 12.06 0.49 0.128 0.005 24 3.18 0 0 0 1.74 392 205 6 0.38 0 | Mollusks, scallop, mixed species, raw
90240 | scallops, steamed | cooked scallops | mollusc | cooked |  | mollusc |  |  |  | 70.25 111 20.54 0.84 0.218 0.009 41 5.41 0 0 0 2.97 667 314 10 0.58 0 | Mollusks, scallop, (bay and sea), cooked, steamed
15175 | squid | calamari | mollusc | raw |  | mollusc |  |  | 4.27 9.02 4.11 | 78.55 92 15.58 1.38 0.358 - 233 3.08 0 0 0 1.41 44 246 32 0.68 0 | Mollusks, squid, mixed species, raw
15166 | octopus |  | mollusc | raw |  | mollusc |  |  | 4.27 9.02 4.11 | 80.25 82 14.91 1.04 0.227 - 48 2.2 0 0 0 1.6 230 350 53 5.3 0 | Mollusks, octopus, common, raw
15230 | octopus, cooked |  | mollusc | cooked |  | mollusc |  |  | 4.27 9.02 4.11 | 60.5 164 29.82 2.08 0.453 - 96 4.4 0 0 0 3.2 460 630 106 9.54 0 | Mollusks, octopus, common, cooked, moist heat
`
