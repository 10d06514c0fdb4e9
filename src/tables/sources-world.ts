/** The publications behind the rules from Asia, Africa, Australia, New Zealand and South America. */
import type { Source } from './source.ts';

export const SOURCES_WORLD = {
  'ke-egerton-avocado': { title: 'Fertiliser application and pruning of Hass and Fuerte varieties', publisher: 'Egerton University, Department of Crops, Horticulture and Soils', note: 'read in a copy' },
  'bd-frg-2018-mango': { title: 'Fertilizer Recommendation Guide 2018, fruit crops: mango', publisher: 'Bangladesh Agricultural Research Council', year: 2018, url: 'https://frg2018.com/fruit_crops' },
  'bd-bari-mango-trial': { title: 'Effect of nitrogen, phosphorus, potassium and sulphur on the yield of mango', publisher: 'Bangladesh J. Agril. Res. 39(4)', year: 2014, url: 'https://banglajol.info/index.php/BJAR/article/view/22542' },
  'tw-afa-guava': { title: '作物施肥手冊, page 47: 番石榴', publisher: 'Agriculture and Food Agency, Taiwan', url: 'https://ebook.afa.gov.tw/afa/ebook12_2/files/basic-html/page47.html' },
  'tw-afa-citrus': { title: '國產優良品牌蔬果生產管理技術作業標準, page 51: 柑橘三要素推薦量', publisher: 'Agriculture and Food Agency, Taiwan', url: 'https://www.afa.gov.tw/ebook/afa/ebook12_4/files/basic-html/page51.html' },
  'tw-pear': { title: '梨樹合理化施肥, quoting 作物施肥手冊', publisher: 'Airiti Library, Taiwan', year: 2005, note: 'read in a copy' },
  'jp-gunma-fruit': { title: '作物別施肥基準 4)果樹', publisher: 'Gunma Prefecture', url: 'http://aic.pref.gunma.jp/agricultural/management/technology/soil/04/index.html', note: 'read in a copy' },
  'jp-home-persimmon': { title: '家庭で楽しむ果物作り 第17回 カキの施肥について(その2)', publisher: 'くだもの・科学・健康ジャーナルHP', url: 'http://moduep.mizubasyou.com/kachan/kachan_17.html' },
  'au-wa-citrus-nutrition': { title: 'Citrus nutrition', publisher: 'Department of Primary Industries and Regional Development, Western Australia', year: 2019, url: 'https://www.agric.wa.gov.au/citrus/citrus-nutrition' },
  'in-icar-ecourse-kiwifruit': { title: 'Kiwifruit: Orchard Floor Management', publisher: 'ICAR e-Courses (IASRI), New Delhi', url: 'http://ecoursesonline.iasri.res.in/mod/page/view.php?id=79073' },
  'in-icar-ecourse-walnut': { title: 'Walnut: Cultural Practices', publisher: 'ICAR e-Courses (IASRI), New Delhi', url: 'http://ecoursesonline.iasri.res.in/mod/page/view.php?id=79088' },
  'in-icar-ecourse-fig': { title: 'Fig: Irrigation and Nutrition', publisher: 'ICAR e-Courses (IASRI), New Delhi', year: 2012, url: 'http://ecoursesonline.iasri.res.in/mod/page/view.php?id=97774' },
  'in-research-rdf-peach': { title: 'Study on Economics of Peach Cultivation under Different Fertigation Level and Foliar Applications in Tarai region of Uttarakhand, India', publisher: 'International Journal of Current Microbiology and Applied Sciences 7(8)', year: 2018, url: 'https://doi.org/10.20546/ijcmas.2018.708.365', note: 'read in a copy' },
  'in-research-rdf-guava': { title: 'Integrated approach for nutrient management in guava cv. L- 49 under Malwa Plateau conditions of Madhya Pradesh', publisher: 'International Journal of Agricultural Sciences', note: 'read in a copy' },
  'in-research-rdf-pomegranate': { title: 'Studies on Macronutrient Fertilization in Pomegranate under Sub-Tropical Plains', publisher: 'Journal of Horticultural Sciences 8(2)', year: 2013, url: 'https://doi.org/10.24154/jhs.v8i2.238', note: 'read in a copy' },
  'ar-corrientes-valencia': { title: 'Efecto de inyecciones nutritivas al tronco en la productividad de naranja valencia', publisher: 'Cultivos Tropicales 36(2); Universidad Nacional del Nordeste, Corrientes', year: 2015, url: 'http://scielo.sld.cu/scielo.php?script=sci_arttext&pid=S0258-59362015000200019' },
  'brazil-lemon-npk': { title: 'Lemon yield and fruit quality affected by NPK fertilization', publisher: 'Scientia Horticulturae 96; Instituto Agronômico, São Paulo', year: 2002, note: 'read in a copy' },
} as const satisfies Record<string, Source>;
