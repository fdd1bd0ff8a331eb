#pragma once

// Where the figures of these tests were printed: who, title, year, table. "secondary": a page that repeats another.

inline constexpr char kBbkaBoxes[] =
    "BBKA module notes, Hives frames and ratios, 2015: list of brood box capacities (secondary)";
inline constexpr char kBetts[] =
    "Betts, The size of brood-comb cells, Bee World, September 1938, pp. 106-107: table, cells per dm2";
inline constexpr char kBienenNatur[] = "bienen&natur, Wie viel Kilogramm Futter braucht ein Bienenvolk fuer den Winter "
                                       "(undated): months, and food in one full comb";
inline constexpr char kBbkaNews[] = "BBKA News 216, August 2013, Winter Feeding: stores, and what a full frame holds";
inline constexpr char kBoxArticle[] = "Article on choosing box sizes, 2021: table of full weights (secondary)";
inline constexpr char kBoxGuide[] = "Box size guide (trade page, undated): table of full weights";
inline constexpr char kBrodschneider2016[] =
    "Brodschneider et al., J. Apic. Res. 55:375-378, 2016: losses of winter 2015/16, 29 countries";
inline constexpr char kBrodschneider2018[] =
    "Brodschneider et al., J. Apic. Res. 57:452-457, 2018: losses of winter 2016/17, 30 countries";
inline constexpr char kBuckfastClub[] = "Buckfastimker Weser-Ems, Kontrolle Milbenfall (undated): worked example";
inline constexpr char kCcohs[] = "CCOHS, NIOSH vertical distance example (undated)";
inline constexpr char kCraft[] = "Craft, Got Questions, BEEKeeping Your First Three Years, Winter 2016";
inline constexpr char kCrc[] = "CRC Handbook of Chemistry and Physics: sucrose table at 20 C, density";
inline constexpr char kCrcGrams[] = "CRC Handbook of Chemistry and Physics: sucrose table at 20 C, grams per litre";
inline constexpr char kEfbPlan[] = "Scottish Government, European foulbrood control plan 2020: weeks of restriction";
inline constexpr char kFarrar[] =
    "Farrar, Productive Management of Honeybee Colonies, USDA Circular 702, 1944: summary";
inline constexpr char kGray2019[] = "Gray et al., J. Apic. Res. 58(4), 2019: losses of winter 2017/18, 36 countries";
inline constexpr char kGray2020[] =
    "Gray et al., J. Apic. Res. 59:744-751, 2020: losses of winter 2018/19, 35 countries";
inline constexpr char kGrayPeterson[] = "Gray, Peterson, 2014: losses in Scotland, winter 2012/13, 108 beekeepers";
inline constexpr char kHandling[] = "Environmentally Conscious Materials Handling (undated): Table 2.10, turning";
inline constexpr char kSustainable[] = "sustainablebees.blog (undated): days without a queen before workers lay";
inline constexpr char kHiveList[] = "UK list of hive sizes (undated, secondary): comb of ten Langstroth deep frames";
inline constexpr char kImdorf[] =
    "Imdorf, Gerig, Course in Determination of Colony Strength (undated): interval of population estimates";
inline constexpr char kLaunceston[] = "Launceston Beekeepers, Queen bee marking (undated): table of colours";
inline constexpr char kLee[] = "Lee et al., J. Econ. Entomol. 103:1039-1050, 2010: abstract, sample for beekeepers";
inline constexpr char kLifeStages[] = "Life-stage table printed by two pages (undated, secondary)";
inline constexpr char kMacFawn[] = "MacFawn, Making Splits, Bee Culture (undated): days of a new split";
inline constexpr char kManitoba[] = "Manitoba producer page (undated): deep honey super of nine frames";
inline constexpr char kMohos[] =
    "Mohos, Confectionery and Chocolate Engineering, 2010, Appendix 2, Table A2.3: saturation at 20 C";
inline constexpr char kNassMay2016[] = "USDA NASS, Honey Bee Colonies, release of 12 May 2016: colonies lost";
inline constexpr char kNassAugust2017[] = "USDA NASS, Honey Bee Colonies, release of 1 August 2017, table p04";
inline constexpr char kOliver[] = "Oliver, Re-evaluating varroa monitoring part 2, 2020: chance to see no mite";
inline constexpr char kPbka[] = "pbka.info, Multiple eggs in a cell, 29 June 2010: when cappings decide";
inline constexpr char kSwarmBooklet[] = "Swarm-control booklet (undated, quoted): calendar of a queen cell";
inline constexpr char kTropilaelaps[] = "WOAH Terrestrial Code article 9.5.1, 2018: days away from brood";
inline constexpr char kUsdaWinter[] =
    "USDA-ARS on DeGrandi-Hoffman et al., J. Econ. Entomol. 112, 2019, by Farm Progress: rule of thumb";
inline constexpr char kVarroaChapter[] = "COLOSS BEEBOOK, varroa chapter 4.2.3.1.2.1 (undated there): worked example, "
                                         "43 mites among 310 bees (misprinted as 14.3)";
