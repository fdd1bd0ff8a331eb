#include "core/model/references.h"

#include <array>

namespace core {

namespace {

constexpr Reference kReferences[] = {
    {Table::Stand, 0, Table::Yard},
    {Table::Colony, 5, Table::BoxKind},
    {Table::Placement, 0, Table::Colony},
    {Table::Placement, 1, Table::Stand},
    {Table::Visit, 0, Table::Colony},
    {Table::VisitSign, 0, Table::Visit},
    {Table::Transfer, 1, Table::Colony},
    {Table::Transfer, 2, Table::Colony},
    {Table::Result, 0, Table::Colony},
    {Table::Result, 1, Table::Yard},
    {Table::Treatment, 0, Table::Colony},
    {Table::Treatment, 1, Table::Yard},
    {Table::Lineage, 2, Table::Colony},
    {Table::Lineage, 3, Table::Colony},
    {Table::Kit, 0, Table::Yard},
    {Table::Kit, 3, Table::Colony},
    {Table::FixedThing, 0, Table::Yard},
    {Table::MergeDay, 0, Table::Yard},
    {Table::MergeChoice, 0, Table::MergeDay},
    {Table::MergeChoice, 2, Table::Colony},
    {Table::MergeChoice, 3, Table::Colony},
    {Table::MergeStrip, 0, Table::MergeDay},
    {Table::MergeStrip, 3, Table::Colony},
    {Table::MergeStrip, 4, Table::Colony},
    {Table::MergeStrip, 5, Table::Colony},
    {Table::DivideChoice, 0, Table::MergeDay},
    {Table::DivideChoice, 1, Table::Colony},
    {Table::DivideStrip, 0, Table::MergeDay},
    {Table::DivideStrip, 2, Table::Colony},
    {Table::Feeding, 0, Table::Colony},
    {Table::Queen, 0, Table::Colony},
    {Table::Queen, 9, Table::Colony},
    {Table::Sample, 0, Table::Colony},
    {Table::Sample, 7, Table::Result},
    {Table::MiteFall, 0, Table::Colony},
    {Table::StripsOut, 0, Table::Treatment},
    {Table::StripsOut, 1, Table::Colony},
    {Table::KitEnd, 1, Table::Yard},
    {Table::KitEnd, 3, Table::Colony},
};

constexpr std::array<size_t, 1> kFirst = {0};
constexpr std::array<size_t, 1> kSecond = {1};
constexpr std::array<size_t, 2> kFirstTwo = {0, 1};
constexpr std::array<size_t, 1> kAnswer = {7};
constexpr std::array<size_t, 2> kYardAndKey = {0, 2};
constexpr std::array<size_t, 2> kKeyAndSince = {1, 2};
constexpr std::array<size_t, 2> kColonyAndSince = {0, 3};
constexpr std::array<size_t, 1> kInto = {3};
constexpr std::array<size_t, 3> kFirstThree = {0, 1, 2};
constexpr std::array<size_t, 4> kFirstFour = {0, 1, 2, 3};
constexpr std::array<size_t, 2> kDayAndColony = {0, 2};
constexpr std::array<size_t, 2> kDayAndMoved = {0, 3};
constexpr std::array<size_t, 2> kPlaceAndDisease = {1, 2};

} // namespace

std::span<const Reference> references() { return kReferences; }

std::span<const UniqueKey> uniqueKeys() {
    static const std::array<UniqueKey, 31> keys{{
        {Table::Yard, kSecond, -1, {}},
        {Table::Stand, kYardAndKey, -1, {}},
        {Table::BoxKind, kSecond, -1, {}},
        {Table::Colony, kKeyAndSince, -1, {}},
        {Table::Colony, kSecond, 3, {}}, // of the living
        {Table::Placement, kFirst, 5, qint64(1)},
        {Table::Placement, kColonyAndSince, 5, qint64(0)},
        {Table::Placement, kFirst, 4, {}},
        {Table::Placement, kSecond, 4, {}},
        {Table::Visit, kFirstTwo, -1, {}},
        {Table::VisitSign, kFirstTwo, -1, {}},
        {Table::Lineage, kInto, 1, QStringLiteral("divided")},
        {Table::Setting, kFirst, -1, {}},
        {Table::Person, kSecond, -1, {}},
        {Table::MergeDay, kFirstThree, -1, {}},
        {Table::MergeChoice, kFirstFour, -1, {}},
        {Table::MergeChoice, kDayAndColony, 1, QStringLiteral("leave-out")},
        {Table::MergeStrip, kFirstTwo, -1, {}},
        {Table::MergeStrip, kDayAndMoved, -1, {}},
        {Table::DivideChoice, kFirstTwo, -1, {}},
        {Table::DivideStrip, kFirstTwo, -1, {}},
        {Table::DivideStrip, kDayAndColony, -1, {}},
        {Table::Queen, kFirstTwo, -1, {}},
        {Table::Queen, kFirst, 2, {}}, // of those that head one
        {Table::FileMapping, kSecond, -1, {}},
        {Table::Phrase, kSecond, -1, {}},
        {Table::Question, kSecond, -1, {}},
        {Table::Sample, kAnswer, -1, {}},
        {Table::MiteFall, kFirstTwo, -1, {}},
        {Table::StripsOut, kFirstTwo, -1, {}},
        {Table::Notifiable, kPlaceAndDisease, -1, {}},
    }};
    return keys;
}

} // namespace core
