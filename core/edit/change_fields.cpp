#include "core/edit/change_fields.h"

#include <QCoreApplication>

#include <array>

namespace core::edit {

namespace {

constexpr FieldKind kKey{QT_TRANSLATE_NOOP("History", ""), CellKind::Hidden};

constexpr FieldKind kYard[] = {{QT_TRANSLATE_NOOP("History", "Name"), CellKind::Text},
                               kKey,
                               {QT_TRANSLATE_NOOP("History", "Latitude"), CellKind::Degrees},
                               {QT_TRANSLATE_NOOP("History", "Longitude"), CellKind::Degrees},
                               {QT_TRANSLATE_NOOP("History", "Gate, east"), CellKind::Metres},
                               {QT_TRANSLATE_NOOP("History", "Gate, north"), CellKind::Metres},
                               {QT_TRANSLATE_NOOP("History", "Note"), CellKind::Text},
                               {QT_TRANSLATE_NOOP("History", "Closed"), CellKind::YesNo}};
constexpr FieldKind kStand[] = {{QT_TRANSLATE_NOOP("History", "Yard"), CellKind::Yard},
                                {QT_TRANSLATE_NOOP("History", "Name"), CellKind::Text},
                                kKey,
                                {QT_TRANSLATE_NOOP("History", "East"), CellKind::Metres},
                                {QT_TRANSLATE_NOOP("History", "North"), CellKind::Metres},
                                {QT_TRANSLATE_NOOP("History", "Taken off the plan"), CellKind::YesNo}};
constexpr FieldKind kBoxKind[] = {{QT_TRANSLATE_NOOP("History", "Name"), CellKind::Text},
                                  kKey,
                                  {QT_TRANSLATE_NOOP("History", "Frames"), CellKind::Number},
                                  {QT_TRANSLATE_NOOP("History", "Width"), CellKind::Millimetres},
                                  {QT_TRANSLATE_NOOP("History", "Length"), CellKind::Millimetres},
                                  {QT_TRANSLATE_NOOP("History", "Height"), CellKind::Millimetres},
                                  {QT_TRANSLATE_NOOP("History", "Empty weight"), CellKind::Kilograms}};
constexpr FieldKind kColony[] = {{QT_TRANSLATE_NOOP("History", "Label"), CellKind::Text},
                                 kKey,
                                 {QT_TRANSLATE_NOOP("History", "Since"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Ended"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "How it ended"), CellKind::Word},
                                 {QT_TRANSLATE_NOOP("History", "Box"), CellKind::BoxKind},
                                 {QT_TRANSLATE_NOOP("History", "Brood boxes at first"), CellKind::Number},
                                 {QT_TRANSLATE_NOOP("History", "Queen's year"), CellKind::Number},
                                 {QT_TRANSLATE_NOOP("History", "Note"), CellKind::Text}};
constexpr FieldKind kPlacement[] = {{QT_TRANSLATE_NOOP("History", "Colony"), CellKind::Colony},
                                    {QT_TRANSLATE_NOOP("History", "Stand"), CellKind::Stand},
                                    {QT_TRANSLATE_NOOP("History", "Faces"), CellKind::Degrees},
                                    {QT_TRANSLATE_NOOP("History", "From"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Until"), CellKind::Text},
                                    kKey};
constexpr FieldKind kVisit[] = {{QT_TRANSLATE_NOOP("History", "Colony"), CellKind::Colony},
                                {QT_TRANSLATE_NOOP("History", "Day"), CellKind::Text},
                                {QT_TRANSLATE_NOOP("History", "Brood boxes"), CellKind::Number},
                                {QT_TRANSLATE_NOOP("History", "Bees seen from above"), CellKind::Frames},
                                {QT_TRANSLATE_NOOP("History", "Bees seen from below"), CellKind::Frames},
                                {QT_TRANSLATE_NOOP("History", "Bees from above, upper box"), CellKind::Frames},
                                {QT_TRANSLATE_NOOP("History", "Bees from below, upper box"), CellKind::Frames},
                                {QT_TRANSLATE_NOOP("History", "Stores"), CellKind::Frames},
                                {QT_TRANSLATE_NOOP("History", "Stores, upper box"), CellKind::Frames},
                                {QT_TRANSLATE_NOOP("History", "Queen"), CellKind::Word},
                                {QT_TRANSLATE_NOOP("History", "Brood frames"), CellKind::Number},
                                {QT_TRANSLATE_NOOP("History", "Brood frames checked"), CellKind::Number},
                                {QT_TRANSLATE_NOOP("History", "Supers"), CellKind::Number},
                                {QT_TRANSLATE_NOOP("History", "Weight"), CellKind::Kilograms},
                                {QT_TRANSLATE_NOOP("History", "Mites"), CellKind::Number},
                                {QT_TRANSLATE_NOOP("History", "Bees in the mite sample"), CellKind::Number},
                                {QT_TRANSLATE_NOOP("History", "By"), CellKind::Text},
                                {QT_TRANSLATE_NOOP("History", "Note"), CellKind::Text}};
constexpr FieldKind kVisitSign[] = {
    {QT_TRANSLATE_NOOP("History", "Visit"), CellKind::Hidden}, // the record is named by it
    {QT_TRANSLATE_NOOP("History", "Sign"), CellKind::Word}};
constexpr FieldKind kTransfer[] = {{QT_TRANSLATE_NOOP("History", "Day"), CellKind::Text},
                                   {QT_TRANSLATE_NOOP("History", "From colony"), CellKind::Colony},
                                   {QT_TRANSLATE_NOOP("History", "To colony"), CellKind::Colony},
                                   {QT_TRANSLATE_NOOP("History", "What"), CellKind::Word},
                                   {QT_TRANSLATE_NOOP("History", "How many"), CellKind::Number},
                                   {QT_TRANSLATE_NOOP("History", "Note"), CellKind::Text}};
constexpr FieldKind kResult[] = {{QT_TRANSLATE_NOOP("History", "Colony"), CellKind::Colony},
                                 {QT_TRANSLATE_NOOP("History", "Yard"), CellKind::Yard},
                                 {QT_TRANSLATE_NOOP("History", "Day"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Disease"), CellKind::Word},
                                 {QT_TRANSLATE_NOOP("History", "Verdict"), CellKind::Word},
                                 {QT_TRANSLATE_NOOP("History", "Found by"), CellKind::Word},
                                 {QT_TRANSLATE_NOOP("History", "By"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Paper"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Note"), CellKind::Text}};
constexpr FieldKind kTreatment[] = {{QT_TRANSLATE_NOOP("History", "Colony"), CellKind::Colony},
                                    {QT_TRANSLATE_NOOP("History", "Yard"), CellKind::Yard},
                                    {QT_TRANSLATE_NOOP("History", "Day"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Product"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Substance"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Antibiotic"), CellKind::YesNo},
                                    {QT_TRANSLATE_NOOP("History", "Batch"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Quantity"), CellKind::Number},
                                    {QT_TRANSLATE_NOOP("History", "Unit"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Method"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Supplier"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Supplier's address"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Bought"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Quantity bought"), CellKind::Number},
                                    {QT_TRANSLATE_NOOP("History", "Proof of purchase"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Prescribed by"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Prescriber's contact"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Days it lasts"), CellKind::Number},
                                    {QT_TRANSLATE_NOOP("History", "Days of withdrawal"), CellKind::Number},
                                    {QT_TRANSLATE_NOOP("History", "Disposed of"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Quantity disposed of"), CellKind::Number},
                                    {QT_TRANSLATE_NOOP("History", "How disposed of"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "By"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Reason"), CellKind::Text}};
constexpr FieldKind kLineage[] = {{QT_TRANSLATE_NOOP("History", "Day"), CellKind::Text},
                                  {QT_TRANSLATE_NOOP("History", "How"), CellKind::Word},
                                  {QT_TRANSLATE_NOOP("History", "Colony"), CellKind::Colony},
                                  {QT_TRANSLATE_NOOP("History", "Into"), CellKind::Colony},
                                  {QT_TRANSLATE_NOOP("History", "By"), CellKind::Text},
                                  {QT_TRANSLATE_NOOP("History", "Note"), CellKind::Text}};
constexpr FieldKind kKit[] = {{QT_TRANSLATE_NOOP("History", "Yard"), CellKind::Yard},
                              {QT_TRANSLATE_NOOP("History", "Part"), CellKind::Text},
                              {QT_TRANSLATE_NOOP("History", "State"), CellKind::Word},
                              {QT_TRANSLATE_NOOP("History", "Came off"), CellKind::Colony},
                              {QT_TRANSLATE_NOOP("History", "How many"), CellKind::Number}};
constexpr FieldKind kSetting[] = {{QT_TRANSLATE_NOOP("History", "Setting"), CellKind::Hidden},
                                  {QT_TRANSLATE_NOOP("History", "Value"), CellKind::Text}};
constexpr FieldKind kPerson[] = {{QT_TRANSLATE_NOOP("History", "Name"), CellKind::Text},
                                 kKey,
                                 {QT_TRANSLATE_NOOP("History", "Offered"), CellKind::YesNo}};
constexpr FieldKind kFixedThing[] = {{QT_TRANSLATE_NOOP("History", "Yard"), CellKind::Yard},
                                     {QT_TRANSLATE_NOOP("History", "What"), CellKind::Word},
                                     {QT_TRANSLATE_NOOP("History", "Name"), CellKind::Text},
                                     {QT_TRANSLATE_NOOP("History", "Points"), CellKind::Points},
                                     {QT_TRANSLATE_NOOP("History", "Radius"), CellKind::Metres}};
constexpr FieldKind kMergeDay[] = {{QT_TRANSLATE_NOOP("History", "Yard"), CellKind::Yard},
                                   {QT_TRANSLATE_NOOP("History", "Day"), CellKind::Text},
                                   {QT_TRANSLATE_NOOP("History", "Variant"), CellKind::Number},
                                   {QT_TRANSLATE_NOOP("History", "Unions at most"), CellKind::Number},
                                   {QT_TRANSLATE_NOOP("History", "Minutes of the crew"), CellKind::Number},
                                   {QT_TRANSLATE_NOOP("History", "Revision"), CellKind::Number},
                                   {QT_TRANSLATE_NOOP("History", "Note"), CellKind::Text},
                                   {QT_TRANSLATE_NOOP("History", "Queens of the divides"), CellKind::Word}};
constexpr FieldKind kMergeChoice[] = {{QT_TRANSLATE_NOOP("History", "Merge day"), CellKind::Hidden},
                                      {QT_TRANSLATE_NOOP("History", "What is asked"), CellKind::Word},
                                      {QT_TRANSLATE_NOOP("History", "Colony"), CellKind::Colony},
                                      {QT_TRANSLATE_NOOP("History", "With"), CellKind::Colony},
                                      {QT_TRANSLATE_NOOP("History", "Why"), CellKind::Text}};
constexpr FieldKind kMergeStrip[] = {{QT_TRANSLATE_NOOP("History", "Merge day"), CellKind::Hidden},
                                     {QT_TRANSLATE_NOOP("History", "Number"), CellKind::Number},
                                     {QT_TRANSLATE_NOOP("History", "How"), CellKind::Word},
                                     {QT_TRANSLATE_NOOP("History", "Carried"), CellKind::Colony},
                                     {QT_TRANSLATE_NOOP("History", "Host"), CellKind::Colony},
                                     {QT_TRANSLATE_NOOP("History", "On top"), CellKind::Colony},
                                     {QT_TRANSLATE_NOOP("History", "Outcome"), CellKind::Word},
                                     {QT_TRANSLATE_NOOP("History", "Note"), CellKind::Text}};

constexpr FieldKind kDivideChoice[] = {{QT_TRANSLATE_NOOP("History", "Merge day"), CellKind::Hidden},
                                       {QT_TRANSLATE_NOOP("History", "Colony"), CellKind::Colony},
                                       {QT_TRANSLATE_NOOP("History", "Parts at most"), CellKind::Number},
                                       {QT_TRANSLATE_NOOP("History", "Why"), CellKind::Text}};
constexpr FieldKind kDivideStrip[] = {{QT_TRANSLATE_NOOP("History", "Merge day"), CellKind::Hidden},
                                      {QT_TRANSLATE_NOOP("History", "Number"), CellKind::Number},
                                      {QT_TRANSLATE_NOOP("History", "Divided"), CellKind::Colony},
                                      {QT_TRANSLATE_NOOP("History", "Parts"), CellKind::Number},
                                      {QT_TRANSLATE_NOOP("History", "Queens"), CellKind::Word},
                                      {QT_TRANSLATE_NOOP("History", "Outcome"), CellKind::Word},
                                      {QT_TRANSLATE_NOOP("History", "Note"), CellKind::Text}};

constexpr FieldKind kFeeding[] = {{QT_TRANSLATE_NOOP("History", "Colony"), CellKind::Colony},
                                  {QT_TRANSLATE_NOOP("History", "Day"), CellKind::Text},
                                  {QT_TRANSLATE_NOOP("History", "Feed"), CellKind::Word},
                                  {QT_TRANSLATE_NOOP("History", "Sugar to water"), CellKind::Text},
                                  {QT_TRANSLATE_NOOP("History", "Volume"), CellKind::Litres},
                                  {QT_TRANSLATE_NOOP("History", "Weight"), CellKind::Kilograms},
                                  {QT_TRANSLATE_NOOP("History", "By"), CellKind::Text},
                                  {QT_TRANSLATE_NOOP("History", "Note"), CellKind::Text}};
constexpr FieldKind kQueen[] = {{QT_TRANSLATE_NOOP("History", "Colony"), CellKind::Colony},
                                {QT_TRANSLATE_NOOP("History", "Since"), CellKind::Text},
                                {QT_TRANSLATE_NOOP("History", "Until"), CellKind::Text},
                                {QT_TRANSLATE_NOOP("History", "What became of her"), CellKind::Word},
                                {QT_TRANSLATE_NOOP("History", "Born"), CellKind::Number},
                                {QT_TRANSLATE_NOOP("History", "Mark"), CellKind::Word},
                                {QT_TRANSLATE_NOOP("History", "Number on her disc"), CellKind::Text},
                                {QT_TRANSLATE_NOOP("History", "Origin"), CellKind::Word},
                                {QT_TRANSLATE_NOOP("History", "Breeder or line"), CellKind::Text},
                                {QT_TRANSLATE_NOOP("History", "Raised from"), CellKind::Colony},
                                {QT_TRANSLATE_NOOP("History", "Note"), CellKind::Text}};
constexpr FieldKind kFileMapping[] = {{QT_TRANSLATE_NOOP("History", "Name"), CellKind::Text},
                                      kKey,
                                      {QT_TRANSLATE_NOOP("History", "Kind of file"), CellKind::Text},
                                      {QT_TRANSLATE_NOOP("History", "Columns of the file"), CellKind::Text},
                                      {QT_TRANSLATE_NOOP("History", "How it is read"), CellKind::Hidden}};
constexpr FieldKind kPhrase[] = {{QT_TRANSLATE_NOOP("History", "Short"), CellKind::Text},
                                 kKey,
                                 {QT_TRANSLATE_NOOP("History", "Sentence"), CellKind::Text}};
constexpr FieldKind kQuestion[] = {{QT_TRANSLATE_NOOP("History", "Name"), CellKind::Text},
                                   kKey,
                                   {QT_TRANSLATE_NOOP("History", "About"), CellKind::Text},
                                   {QT_TRANSLATE_NOOP("History", "What is asked"), CellKind::Hidden},
                                   {QT_TRANSLATE_NOOP("History", "Marked on the plan"), CellKind::YesNo}};

constexpr FieldKind kSample[] = {{QT_TRANSLATE_NOOP("History", "Colony"), CellKind::Colony},
                                 {QT_TRANSLATE_NOOP("History", "Taken"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Disease"), CellKind::Word},
                                 {QT_TRANSLATE_NOOP("History", "Sample of"), CellKind::Word},
                                 {QT_TRANSLATE_NOOP("History", "Laboratory"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Number"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Sent"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Result"), CellKind::Hidden},
                                 {QT_TRANSLATE_NOOP("History", "Given up"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "By"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Note"), CellKind::Text}};
constexpr FieldKind kMiteFall[] = {{QT_TRANSLATE_NOOP("History", "Colony"), CellKind::Colony},
                                   {QT_TRANSLATE_NOOP("History", "Counted"), CellKind::Text},
                                   {QT_TRANSLATE_NOOP("History", "Days on the board"), CellKind::Number},
                                   {QT_TRANSLATE_NOOP("History", "Mites"), CellKind::Number},
                                   {QT_TRANSLATE_NOOP("History", "By"), CellKind::Text},
                                   {QT_TRANSLATE_NOOP("History", "Note"), CellKind::Text}};
constexpr FieldKind kStripsOut[] = {{QT_TRANSLATE_NOOP("History", "Treatment"), CellKind::Hidden},
                                    {QT_TRANSLATE_NOOP("History", "Colony"), CellKind::Colony},
                                    {QT_TRANSLATE_NOOP("History", "Taken out"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "By"), CellKind::Text},
                                    {QT_TRANSLATE_NOOP("History", "Note"), CellKind::Text}};
constexpr FieldKind kKitEnd[] = {{QT_TRANSLATE_NOOP("History", "Day"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Yard"), CellKind::Yard},
                                 {QT_TRANSLATE_NOOP("History", "Part"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Came off"), CellKind::Colony},
                                 {QT_TRANSLATE_NOOP("History", "How many"), CellKind::Number},
                                 {QT_TRANSLATE_NOOP("History", "How"), CellKind::Word},
                                 {QT_TRANSLATE_NOOP("History", "By"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Paper"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Note"), CellKind::Text}};
constexpr FieldKind kNotifiable[] = {{QT_TRANSLATE_NOOP("History", "Place"), CellKind::Text},
                                     kKey,
                                     {QT_TRANSLATE_NOOP("History", "Disease"), CellKind::Word},
                                     {QT_TRANSLATE_NOOP("History", "Must be reported"), CellKind::YesNo},
                                     {QT_TRANSLATE_NOOP("History", "Whom to tell"), CellKind::Text},
                                     {QT_TRANSLATE_NOOP("History", "Source"), CellKind::Text}};
constexpr FieldKind kKeeper[] = {{QT_TRANSLATE_NOOP("History", "Name"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Address"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Contact"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Registration"), CellKind::Text},
                                 {QT_TRANSLATE_NOOP("History", "Place whose rules hold"), CellKind::Text}};

/// In the order of enum Table.
constexpr std::array<std::span<const FieldKind>, kTableCount> kFields = {
    kYard,        kStand,      kBoxKind,      kColony,      kPlacement, kVisit,      kVisitSign,   kTransfer,
    kResult,      kTreatment,  kLineage,      kKit,         kSetting,   kPerson,     kFixedThing,  kMergeDay,
    kMergeChoice, kMergeStrip, kDivideChoice, kDivideStrip, kFeeding,   kQueen,      kFileMapping, kPhrase,
    kQuestion,    kSample,     kMiteFall,     kStripsOut,   kKitEnd,    kNotifiable, kKeeper};

constexpr std::array<std::pair<const char*, const char*>, kTableCount> kRecords = {{
    {QT_TRANSLATE_NOOP("History", "%1 yard"), QT_TRANSLATE_NOOP("History", "%1 yards")},
    {QT_TRANSLATE_NOOP("History", "%1 stand"), QT_TRANSLATE_NOOP("History", "%1 stands")},
    {QT_TRANSLATE_NOOP("History", "%1 box kind"), QT_TRANSLATE_NOOP("History", "%1 box kinds")},
    {QT_TRANSLATE_NOOP("History", "%1 colony"), QT_TRANSLATE_NOOP("History", "%1 colonies")},
    {QT_TRANSLATE_NOOP("History", "%1 place of a hive"), QT_TRANSLATE_NOOP("History", "%1 places of hives")},
    {QT_TRANSLATE_NOOP("History", "%1 visit"), QT_TRANSLATE_NOOP("History", "%1 visits")},
    {QT_TRANSLATE_NOOP("History", "%1 sign seen at a visit"), QT_TRANSLATE_NOOP("History", "%1 signs seen at visits")},
    {QT_TRANSLATE_NOOP("History", "%1 transfer"), QT_TRANSLATE_NOOP("History", "%1 transfers")},
    {QT_TRANSLATE_NOOP("History", "%1 result or order"), QT_TRANSLATE_NOOP("History", "%1 results and orders")},
    {QT_TRANSLATE_NOOP("History", "%1 treatment"), QT_TRANSLATE_NOOP("History", "%1 treatments")},
    {QT_TRANSLATE_NOOP("History", "%1 union, shake-out or divide"),
     QT_TRANSLATE_NOOP("History", "%1 unions, shake-outs and divides")},
    {QT_TRANSLATE_NOOP("History", "%1 count of kit"), QT_TRANSLATE_NOOP("History", "%1 counts of kit")},
    {QT_TRANSLATE_NOOP("History", "%1 setting"), QT_TRANSLATE_NOOP("History", "%1 settings")},
    {QT_TRANSLATE_NOOP("History", "%1 person"), QT_TRANSLATE_NOOP("History", "%1 people")},
    {QT_TRANSLATE_NOOP("History", "%1 fixed thing"), QT_TRANSLATE_NOOP("History", "%1 fixed things")},
    {QT_TRANSLATE_NOOP("History", "%1 merge day"), QT_TRANSLATE_NOOP("History", "%1 merge days")},
    {QT_TRANSLATE_NOOP("History", "%1 choice of a merge day"),
     QT_TRANSLATE_NOOP("History", "%1 choices of merge days")},
    {QT_TRANSLATE_NOOP("History", "%1 strip of a merge day"), QT_TRANSLATE_NOOP("History", "%1 strips of merge days")},
    {QT_TRANSLATE_NOOP("History", "%1 choice of a divide"), QT_TRANSLATE_NOOP("History", "%1 choices of divides")},
    {QT_TRANSLATE_NOOP("History", "%1 divide of a merge day"),
     QT_TRANSLATE_NOOP("History", "%1 divides of merge days")},
    {QT_TRANSLATE_NOOP("History", "%1 feeding"), QT_TRANSLATE_NOOP("History", "%1 feedings")},
    {QT_TRANSLATE_NOOP("History", "%1 queen"), QT_TRANSLATE_NOOP("History", "%1 queens")},
    {QT_TRANSLATE_NOOP("History", "%1 way to read a file"), QT_TRANSLATE_NOOP("History", "%1 ways to read files")},
    {QT_TRANSLATE_NOOP("History", "%1 quick sentence"), QT_TRANSLATE_NOOP("History", "%1 quick sentences")},
    {QT_TRANSLATE_NOOP("History", "%1 question"), QT_TRANSLATE_NOOP("History", "%1 questions")},
    {QT_TRANSLATE_NOOP("History", "%1 sample"), QT_TRANSLATE_NOOP("History", "%1 samples")},
    {QT_TRANSLATE_NOOP("History", "%1 count of fallen mites"),
     QT_TRANSLATE_NOOP("History", "%1 counts of fallen mites")},
    {QT_TRANSLATE_NOOP("History", "%1 end of a treatment"), QT_TRANSLATE_NOOP("History", "%1 ends of treatments")},
    {QT_TRANSLATE_NOOP("History", "%1 end of kit"), QT_TRANSLATE_NOOP("History", "%1 ends of kit")},
    {QT_TRANSLATE_NOOP("History", "%1 line of what must be reported"),
     QT_TRANSLATE_NOOP("History", "%1 lines of what must be reported")},
    {QT_TRANSLATE_NOOP("History", "%1 keeper of the book"), QT_TRANSLATE_NOOP("History", "%1 keepers of the book")},
}};

constexpr std::array<std::pair<const char*, const char*>, 9> kWords = {{
    {"afb", QT_TRANSLATE_NOOP("History", "American foulbrood")},
    {"efb", QT_TRANSLATE_NOOP("History", "European foulbrood")},
    {"brood-doubt", QT_TRANSLATE_NOOP("History", "doubtful brood")},
    {"shaken-out", QT_TRANSLATE_NOOP("History", "shaken out")},
    {"cells", QT_TRANSLATE_NOOP("History", "queen cells")},
    {"bought", QT_TRANSLATE_NOOP("History", "bought queens")},
    {"own", QT_TRANSLATE_NOOP("History", "raised by the bees")},
    {"top", QT_TRANSLATE_NOOP("History", "on top")},
    {"field", QT_TRANSLATE_NOOP("History", "field test")},
}};

QString tr(const char* text) { return QCoreApplication::translate("History", text); }

} // namespace

std::span<const FieldKind> fieldsOf(Table table) { return kFields[static_cast<size_t>(table)]; }

QString recordsText(Table table, qint64 count) {
    const auto& [one, many] = kRecords[static_cast<size_t>(table)];
    return tr(count == 1 ? one : many).arg(count);
}

QString wordText(const QString& word) {
    for (const auto& [stored, shown] : kWords)
        if (word == QLatin1StringView(stored)) return tr(shown);
    return QString(word).replace(u'-', u' ');
}

} // namespace core::edit
