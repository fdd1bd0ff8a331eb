#include "core/exchange/template.h"

#include "core/exchange/csv_writer.h"
#include "core/exchange/export_names.h"
#include "core/exchange/file_kind.h"

#include <memory>
#include <vector>

namespace core::exchange {

void writeTemplates(const QString& dir) {
    OutFolder folder(dir);
    std::vector<std::unique_ptr<CsvWriter>> files;
    for (const FileKind kind : kFileKinds) {
        files.push_back(std::make_unique<CsvWriter>(dir, fileName(kind)));
        files.back()->row(header(kind));
    }
    commitAll(files);
    folder.keep();
}

} // namespace core::exchange
