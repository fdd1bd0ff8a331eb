#include "core/report/enlarge.h"

namespace core::report {

namespace {

constexpr double kLeastMargin = 12; // mm, once enlarged

class Enlarger {
public:
    explicit Enlarger(double by) : m_by(by) {}

    void operator()(TextMark& mark) const {
        point(mark.at);
        mark.pointSize *= m_by;
    }
    void operator()(PathMark& mark) const {
        for (Point& p : mark.points) point(p);
        mark.lineWidth *= m_by;
        for (double& d : mark.dash) d *= m_by;
    }
    void operator()(CurveMark& mark) const {
        for (Point* p : {&mark.from, &mark.control1, &mark.control2, &mark.to}) point(*p);
        mark.lineWidth *= m_by;
        for (double& d : mark.dash) d *= m_by;
    }
    void operator()(CircleMark& mark) const {
        point(mark.centre);
        mark.radius *= m_by;
        mark.lineWidth *= m_by;
    }
    void operator()(HatchMark& mark) const {
        for (Point& p : mark.polygon) point(p);
        mark.spacing *= m_by;
        mark.lineWidth *= m_by;
    }
    void operator()(YardMark& mark) const {
        rect(mark.area);
        mark.enlarged *= m_by;
    }
    void rect(Rect& r) const {
        for (double* side : {&r.x, &r.y, &r.width, &r.height}) *side *= m_by;
    }

private:
    void point(Point& p) const {
        p.x *= m_by;
        p.y *= m_by;
    }

    double m_by;
};

} // namespace

PageSize reduced(PageSize size, double by) {
    if (by == 1) return size;
    return {size.width / by, size.height / by, kLeastMargin / by, 0};
}

std::vector<Page> enlarged(std::vector<Page> pages, double by) {
    if (by == 1) return pages;
    const Enlarger enlarge(by);
    for (Page& page : pages) {
        page.width *= by;
        page.height *= by;
        for (Mark& mark : page.marks) std::visit(enlarge, mark);
        for (Zone& zone : page.zones) enlarge.rect(zone.rect);
    }
    return pages;
}

} // namespace core::report
