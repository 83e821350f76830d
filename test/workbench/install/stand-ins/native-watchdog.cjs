// The real one watches in a thread of its own whether the parent lives; the host also looks once a second in plain JavaScript.
exports.start = () => {}
exports.exit = (code) => process.exit(code)
