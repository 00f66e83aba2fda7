/**
 * USDA National Nutrient Database for Standard Reference, Release 28 (Agricultural Research
 * Service, 2015, revised 2016): rows the worked recipes need and the core table does without, as a
 * table that a cookbook brings. `id` is the NDB number; per 100 g edible portion.
 */
export const sr28Rows = `id\tname\twater_g\tenergy_kcal\tprotein_g\tfat_g\tcarbohydrate_g\tfibre_g\talcohol_g
01042\tAmerican cheese, fortified\t39.61\t366\t18.13\t30.71\t4.78\t0.0\t0.0
01079\tmilk, 2 % fat\t89.21\t50\t3.30\t1.98\t4.80\t0.0\t0.0
01082\tmilk, 1 % fat\t89.92\t42\t3.37\t0.97\t4.99\t0.0\t0.0
01085\tmilk, skimmed\t90.84\t34\t3.37\t0.08\t4.96\t0.0\t0.0
01092\tdry milk, nonfat, instant\t3.96\t358\t35.10\t0.72\t52.19\t0.0\t0.0
01211\tmilk, whole, no added vitamin D\t88.13\t61\t3.15\t3.27\t4.78\t0.0\t0.0
04614\tspread, 60 % fat, stick\t38.68\t526\t0.60\t59.17\t0.00\t0.0\t0.0
04679\tcooking spray\t0.11\t792\t0.26\t78.69\t20.69\t0.0\t0.0
04691\tmargarine, 80 % fat, with vitamin D\t16.52\t717\t0.16\t80.71\t0.70\t0.0\t0.0
04694\tspread, 60 % fat, tub, with vitamin D\t37.58\t533\t0.17\t59.81\t0.86\t0.0\t0.0
09007\tapples, canned, sweetened, drained\t82.36\t67\t0.18\t0.49\t16.70\t1.7\t0.0
09033\tdried apricots, stewed\t75.56\t85\t1.20\t0.18\t22.15\t2.6\t0.0
09131\tgrapes, American type\t81.30\t67\t0.63\t0.35\t17.15\t0.9\t0.0
09207\torange juice, canned\t87.72\t47\t0.68\t0.15\t11.01\t0.3\t0.0
10023\tpork loin, roasted\t57.51\t248\t27.09\t14.65\t0.00\t0.0\t0.0
10134\tham, 5 % fat, roasted\t67.67\t145\t20.93\t5.53\t1.50\t0.0\t0.0
10141\tham, country style, lean, raw\t55.93\t195\t27.80\t8.32\t0.30\t0.0\t0.0
11288\tonions, frozen, boiled\t92.24\t28\t0.77\t0.10\t6.59\t1.8\t0.0
11467\tsquash, crookneck, raw\t94.28\t19\t1.01\t0.27\t3.88\t1.0\t0.0
11888\ttomato purée, canned, salted\t87.88\t38\t1.65\t0.21\t8.98\t1.9\t0.0
11974\tgrape leaves, raw\t73.32\t93\t5.60\t2.12\t17.31\t11.0\t0.0
12138\tmixed nuts without peanuts, roasted\t3.15\t615\t15.52\t56.17\t22.27\t5.5\t0.0
13342\tsandwich steaks, flaked, chopped, formed, raw\t56.00\t309\t16.50\t27.00\t0.00\t0.0\t0.0
13408\tbeef, bottom round, lean, roasted\t65.37\t177\t27.76\t6.48\t0.00\t0.0\t0.0
13864\tbeef, round, full cut, raw\t65.44\t195\t20.56\t11.92\t0.00\t0.0\t0.0
14429\ttap water, municipal\t99.90\t0\t0.00\t0.00\t0.00\t0.0\t0.0
18030\tFrench bread, toasted\t20.61\t319\t13.00\t2.14\t61.93\t3.1\t0.0
18349\tFrench rolls\t34.80\t277\t8.60\t4.30\t50.20\t3.2\t0.0
20022\tcornmeal, degermed, enriched\t11.18\t370\t7.11\t1.75\t79.45\t3.9\t0.0
20044\twhite rice, long-grain, enriched, raw\t11.62\t365\t7.13\t0.66\t79.95\t1.3\t0.0
20120\tpasta, dry, enriched\t9.90\t371\t13.04\t1.51\t74.67\t3.2\t0.0
23612\tbeef, arm pot roast, lean, raw\t72.51\t139\t21.96\t5.05\t0.00\t0.0\t0.0
`
